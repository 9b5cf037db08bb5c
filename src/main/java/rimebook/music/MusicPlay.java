package rimebook.music;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** That the desk began to play a file: written once, under the identity the desk gave. */
@Entity
@Immutable
@Table(name = "music_play")
class MusicPlay extends AppendedRow {

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private UUID segment;

	@Column(name = "version_id")
	private UUID version;

	private Instant startedAt;

	private String playedBy;

	private Instant notedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected MusicPlay() {
	}

	MusicPlay(UUID id, MusicVersion version, Instant startedAt, Actor actor, Instant now) {
		super(id);
		this.entry = version.entry().value();
		this.segment = version.segment().value();
		this.version = version.getId();
		this.startedAt = startedAt;
		this.playedBy = actor.name();
		this.notedAt = now;
	}

	UUID entry() {
		return this.entry;
	}

	/** Tell whether it is the very same, told once more. */
	boolean tells(MusicPlays.NotePlay told) {
		return this.version.equals(told.version().value());
	}

	MusicPlays.Played view() {
		return new MusicPlays.Played(new MusicView.VersionId(this.version), this.startedAt, this.playedBy);
	}

}
