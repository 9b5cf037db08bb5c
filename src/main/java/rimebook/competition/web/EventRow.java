package rimebook.competition.web;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingPolicies;

/**
 * An event as people read it.
 *
 * @param cancelled why it does not take place, empty if it does
 */
record EventRow(EventId id, String name, JudgingMethod method, int judges, String evenPanelReason,
		JudgingPolicies policies, boolean usualRules, DraftEvent.@Nullable PointsChoice points,
		List<SegmentRow> segments, boolean signatureWaits, String cancelled) {

	static EventRow of(EventView view) {
		return new EventRow(view.id(), view.name(), view.method(), view.judges(), view.evenPanelReason(),
				view.policies(), view.policies().equals(JudgingPolicies.usual()), view.points(),
				view.segments().stream().map(SegmentRow::of).toList(), view.signatureWaits(), view.cancelled());
	}

}
