package rimebook.competition.web;

import java.util.List;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingPolicies;
import rimebook.tabulation.PlacementMethod;

/** An event as people read it. */
record EventRow(EventId id, String name, PlacementMethod method, int judges, String evenPanelReason,
		JudgingPolicies policies, boolean usualRules, List<SegmentRow> segments) {

	static EventRow of(EventView view) {
		return new EventRow(view.id(), view.name(), view.method(), view.judges(), view.evenPanelReason(),
				view.policies(), view.policies().equals(JudgingPolicies.usual()),
				view.segments().stream().map(SegmentRow::of).toList());
	}

}
