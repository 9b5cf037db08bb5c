package rimebook.draw.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.shared.Required;

/** Why teams follow those that were drawn. */
record AdditionForm(@Nullable Integer seen, @Nullable String lateReason) {

	static AdditionForm of(StartingOrderDraw.LateTeams late) {
		return new AdditionForm(late.order(), "");
	}

	StartingOrderDraw.Addition order(SegmentId segment) {
		return new StartingOrderDraw.Addition(segment, (this.seen != null) ? this.seen : 0,
				Required.optional("lateReason", this.lateReason, 500));
	}

}
