package rimebook.competition.web;

import java.util.List;

import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingPolicies;

/**
 * An event as people read it.
 *
 * @param cancelled why it does not take place, empty if it does
 */
record EventRow(EventId id, String name, DraftEvent.Judging judging, List<SegmentRow> segments, String cancelled) {

	static EventRow of(EventView view) {
		return new EventRow(view.id(), view.name(), view.judging(),
				view.segments().stream().map(SegmentRow::of).toList(), view.cancelled());
	}

	/** Tell whether places are made by the usual rules. */
	public boolean isByUsualRules() {
		return this.judging.policies().equals(JudgingPolicies.usual());
	}

}
