package rimebook.draw;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/** Knows how the field stands before a segment that is not the first of its event. */
@FunctionalInterface
public interface StandingBefore {

	/**
	 * The entries that go on to the segment, in any order, with their combined places in
	 * all segments before it; withdrawn and not qualified ones are left out.
	 * @throws rimebook.shared.RuleViolationException {@code standing-incomplete} while an
	 * earlier segment is not complete
	 */
	List<Ranked> standingBefore(SegmentId segment);

	/**
	 * An entry and where it stands before a segment.
	 *
	 * @param place the place it may share with others, {@code null} if it starts in the
	 * segment without one
	 */
	record Ranked(EntryId entry, @Nullable Integer place) {

	}

}
