package rimebook.music;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.AppendedRow;

/** One file of a team for a segment: written once, superseded by the next. */
@Entity
@Immutable
@Table(name = "music_version")
class MusicVersion extends AppendedRow {

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private UUID segment;

	private int number;

	@Enumerated(EnumType.STRING)
	private MusicKind kind;

	private String fileName;

	private long bytes;

	private long milliseconds;

	@Column(name = "sha256")
	private String digest;

	private String lateReason;

	private String handedInBy;

	private Instant handedInAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected MusicVersion() {
	}

	MusicVersion(UUID id, EntryId entry, SegmentId segment, MusicView.Version.File file, Made made) {
		super(id);
		this.entry = entry.value();
		this.segment = segment.value();
		this.number = made.number();
		this.kind = file.kind();
		this.fileName = file.name();
		this.bytes = file.bytes();
		this.milliseconds = file.milliseconds();
		this.digest = file.sha256();
		this.lateReason = made.lateReason();
		this.handedInBy = made.actor().name();
		this.handedInAt = made.now();
	}

	EntryId entry() {
		return new EntryId(this.entry);
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	int number() {
		return this.number;
	}

	long bytes() {
		return this.bytes;
	}

	String digest() {
		return this.digest;
	}

	/**
	 * @param here whether the bytes are here
	 */
	MusicView.Version view(boolean here) {
		return new MusicView.Version(new MusicView.VersionId(getId()), this.number,
				new MusicView.Version.File(this.kind, this.fileName, this.bytes, this.milliseconds, this.digest), here,
				new MusicView.Version.HandedIn(this.lateReason, this.handedInBy, this.handedInAt));
	}

	/** As on the record. */
	String inWords(String segment) {
		return "%s: version %d, %s, %s, %d bytes, sha256 %s".formatted(segment, this.number, this.kind,
				MusicWindow.time(this.milliseconds / 1000), this.bytes, this.digest);
	}

	/** How it came to be. */
	record Made(int number, String lateReason, Actor actor, Instant now) {
	}

}
