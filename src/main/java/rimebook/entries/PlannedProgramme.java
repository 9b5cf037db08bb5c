package rimebook.entries;

import java.util.List;
import java.util.UUID;

import jakarta.persistence.Entity;

import rimebook.competition.SegmentId;
import rimebook.shared.ConflictException;

/** The elements that a team means to skate in one segment. */
@Entity
class PlannedProgramme extends EntryProgramme {

	private String codes = "";

	// For Hibernate.
	protected PlannedProgramme() {
	}

	PlannedProgramme(UUID id, EntryId entry, SegmentId segment) {
		super(id, entry, segment);
	}

	/** Put another plan in place of the one that was seen. */
	void plan(List<String> codes, int seen) {
		ConflictException.requireSeen("plan", seen, seen(PlannedElements.PlanView.NONE));
		this.codes = String.join(" ", codes);
	}

	String inWords() {
		return this.codes;
	}

	PlannedElements.PlanView view() {
		return new PlannedElements.PlanView(entry(), segment(),
				this.codes.isEmpty() ? List.of() : List.of(this.codes.split(" ")), seen(PlannedElements.PlanView.NONE));
	}

}
