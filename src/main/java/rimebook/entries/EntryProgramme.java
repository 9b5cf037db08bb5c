package rimebook.entries;

import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;

/** Something that is known of a team in one segment, and written down by people. */
@MappedSuperclass
abstract class EntryProgramme {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private UUID segment;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected EntryProgramme() {
	}

	EntryProgramme(UUID id, EntryId entry, SegmentId segment) {
		this.id = id;
		this.entry = entry.value();
		this.segment = segment.value();
	}

	EntryId entry() {
		return new EntryId(this.entry);
	}

	SegmentId segment() {
		return new SegmentId(this.segment);
	}

	/** The version that a person sees; {@code none} before it is stored. */
	int seen(int none) {
		return (this.version != null) ? this.version : none;
	}

}
