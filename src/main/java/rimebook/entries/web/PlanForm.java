package rimebook.entries.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.entries.PlannedElements;

/** The planned elements of a segment as typed. */
record PlanForm(@Nullable String codes, @Nullable Integer version) {

	@Override
	public String codes() {
		return (this.codes != null) ? this.codes : "";
	}

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : 0;
	}

	static PlanForm of(PlannedElements.PlanView plan) {
		return new PlanForm(String.join("\n", plan.codes()), plan.version());
	}

	PlannedElements.PlanElements order(EntryId entry, SegmentId segment) {
		return new PlannedElements.PlanElements(entry, segment, codes(), version());
	}

}
