package rimebook.competition.web;

import org.jspecify.annotations.Nullable;

import rimebook.competition.DraftEvent;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.tabulation.Hundredths;
import rimebook.tabulation.SegmentKind;

/**
 * A segment as people read it: factor 0.5, length 2:40.
 *
 * @param cancelled why it does not take place, empty if it does
 */
record SegmentRow(SegmentId id, String name, SegmentKind kind, String factor, ProgrammeLength programme,
		String cancelled) {

	static SegmentRow of(SegmentView view) {
		return new SegmentRow(view.id(), view.name(), view.kind(), Hundredths.decimal(view.factor()),
				ProgrammeLength.of(view.facts()), view.cancelled());
	}

	/**
	 * How long its programme is.
	 *
	 * @param asked the length asked for
	 * @param tolerance how many seconds it may be longer and shorter; {@code null} where
	 * these differ
	 * @param shortest the shortest programme, empty where only the longest is limited
	 */
	record ProgrammeLength(String asked, @Nullable Integer tolerance, String shortest, String longest) {

		static ProgrammeLength of(DraftEvent.DraftSegment segment) {
			int asked = segment.programmeSeconds();
			int longer = segment.toleranceSeconds();
			Integer shorter = segment.shorterSeconds();
			return new ProgrammeLength(Typed.length(asked), (shorter != null && shorter == longer) ? shorter : null,
					(shorter != null) ? Typed.length(Math.max(0, asked - shorter)) : "", Typed.length(asked + longer));
		}

	}

}
