package rimebook.music;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** Until when a competition takes music: written once, superseded by the next. */
@Entity
@Immutable
@Table(name = "music_deadline")
class MusicDeadline extends AppendedRow {

	@Column(name = "competition_id")
	private UUID competition;

	private int number;

	private @Nullable Instant closesAt;

	private String setBy;

	private Instant setAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected MusicDeadline() {
	}

	MusicDeadline(UUID id, CompetitionId competition, int number, @Nullable Instant closesAt, Actor actor,
			Instant now) {
		super(id);
		this.competition = competition.value();
		this.number = number;
		this.closesAt = closesAt;
		this.setBy = actor.name();
		this.setAt = now;
	}

	UUID competition() {
		return this.competition;
	}

	int number() {
		return this.number;
	}

	@Nullable Instant closesAt() {
		return this.closesAt;
	}

}
