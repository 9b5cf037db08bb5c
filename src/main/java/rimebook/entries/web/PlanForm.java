package rimebook.entries.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.entries.PlanElements;
import rimebook.entries.PlannedProgrammeView;

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

	static PlanForm of(PlannedProgrammeView plan) {
		return new PlanForm(String.join("\n", plan.codes()), plan.version());
	}

	PlanElements order(EntryId entry, SegmentId segment) {
		return new PlanElements(entry, segment, codes(), version());
	}

}
