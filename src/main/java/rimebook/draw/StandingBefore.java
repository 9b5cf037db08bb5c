package rimebook.draw;

import java.util.List;

import rimebook.competition.SegmentId;

/** Knows how the field stands before a segment that is not the first of its event. */
@FunctionalInterface
public interface StandingBefore {

	/**
	 * The entries that go on to the segment, in any order, with their combined places in
	 * all segments before it; withdrawn and not qualified ones are left out.
	 * @throws rimebook.shared.RuleViolationException {@code standing-incomplete} while an
	 * earlier segment is not complete
	 */
	List<RankedEntry> standingBefore(SegmentId segment);

}
