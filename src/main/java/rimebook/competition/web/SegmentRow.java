package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.SegmentKind;

/**
 * A segment as people read it: factor 0.5, length 2:40.
 *
 * @param tolerance how many seconds it may be longer and shorter; {@code null} where
 * these differ
 * @param shortest the shortest programme, empty where only the longest is limited
 * @param cancelled why it does not take place, empty if it does
 */
record SegmentRow(SegmentId id, String name, SegmentKind kind, String factor, String length,
		@Nullable Integer tolerance, String shortest, String longest, String cancelled) {

	static SegmentRow of(SegmentView view) {
		return new SegmentRow(view.id(), view.name(), view.kind(), Hundredths.decimal(view.factor()),
				Typed.length(view.programmeSeconds()), tolerance(view), shortest(view),
				Typed.length(view.programmeSeconds() + view.toleranceSeconds()), view.cancelled());
	}

	private static @Nullable Integer tolerance(SegmentView view) {
		Integer shorter = view.shorterSeconds();
		return (shorter != null && shorter == view.toleranceSeconds()) ? shorter : null;
	}

	private static String shortest(SegmentView view) {
		Integer shorter = view.shorterSeconds();
		return (shorter != null) ? Typed.length(Math.max(0, view.programmeSeconds() - shorter)) : "";
	}

}
