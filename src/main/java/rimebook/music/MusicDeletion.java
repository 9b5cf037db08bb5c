package rimebook.music;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.competition.CompetitionId;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** That the music of a competition was deleted: written once. */
@Entity
@Immutable
@Table(name = "music_deletion")
class MusicDeletion extends AppendedRow {

	@Column(name = "competition_id")
	private UUID competition;

	private int files;

	private long bytes;

	private String deletedBy;

	private Instant deletedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected MusicDeletion() {
	}

	MusicDeletion(UUID id, CompetitionId competition, MusicRetention.Deleted deleted, Actor actor, Instant now) {
		super(id);
		this.competition = competition.value();
		this.files = deleted.files();
		this.bytes = deleted.bytes();
		this.deletedBy = actor.name();
		this.deletedAt = now;
	}

	UUID competition() {
		return this.competition;
	}

}
