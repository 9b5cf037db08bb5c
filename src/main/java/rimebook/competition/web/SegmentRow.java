package rimebook.competition.web;

import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.SegmentKind;

/**
 * A segment as people read it: factor 0.5, length 2:40.
 *
 * @param cancelled why it does not take place, empty if it does
 */
record SegmentRow(SegmentId id, String name, SegmentKind kind, String factor, String length, int tolerance,
		String cancelled) {

	static SegmentRow of(SegmentView view) {
		return new SegmentRow(view.id(), view.name(), view.kind(), Hundredths.decimal(view.factor()),
				Typed.length(view.programmeSeconds()), view.toleranceSeconds(), view.cancelled());
	}

}
