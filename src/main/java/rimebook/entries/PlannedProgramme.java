package rimebook.entries;

import java.util.List;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;

import rimebook.competition.SegmentId;
import rimebook.shared.ConflictException;

/** The elements that a team means to skate in one segment. */
@Entity
class PlannedProgramme {

	@Id
	private UUID id;

	@Version
	private Integer version;

	@Column(name = "entry_id")
	private UUID entry;

	@Column(name = "segment_id")
	private UUID segment;

	private String codes = "";

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PlannedProgramme() {
	}

	// Hibernate counts the versions.
	@SuppressWarnings("NullAway.Init")
	PlannedProgramme(UUID id, EntryId entry, SegmentId segment) {
		this.id = id;
		this.entry = entry.value();
		this.segment = segment.value();
	}

	/** Put another plan in place of the one that was seen. */
	void plan(List<String> codes, int seen) {
		ConflictException.requireSeen("plan", seen, seen());
		this.codes = String.join(" ", codes);
	}

	private int seen() {
		return (this.version != null) ? this.version : PlannedElements.PlanView.NONE;
	}

	String inWords() {
		return this.codes;
	}

	PlannedElements.PlanView view() {
		return new PlannedElements.PlanView(new EntryId(this.entry), new SegmentId(this.segment),
				this.codes.isEmpty() ? List.of() : List.of(this.codes.split(" ")), seen());
	}

}
