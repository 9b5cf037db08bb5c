package rimebook.results;

import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.performances.ClosedPerformance;
import rimebook.tabulation.TabulationException;

/**
 * Makes standings of closed cards in one way of judging: pure functions of what they are
 * given, so that the same facts give the same bytes.
 */
public interface MethodStandings {

	/** Tell whether it makes the standings of events that are judged like this one. */
	boolean isFor(EventView event);

	/**
	 * Tabulate the closed cards of a segment.
	 * @throws TabulationException if these cards cannot be tabulated
	 */
	Standing ofSegment(SegmentFacts facts);

	/**
	 * Put the event together from the standings of its segments.
	 * @throws TabulationException if they cannot be combined
	 */
	Standing ofEvent(EventFacts facts);

	/**
	 * Look ahead while teams are still to skate.
	 * @param waiting the entries still to skate the segment, in their order
	 * @param whole the event with the segment's new standing in its place
	 */
	default Outlook outlook(SegmentFacts facts, List<EntryId> waiting, EventFacts whole) {
		return Outlook.NONE;
	}

	/**
	 * What the standing of a segment is made of.
	 *
	 * @param event the event with as many judges as count in the segment
	 * @param closed the performances that are done, by starting number
	 * @param starters how many teams of the starting order did not withdraw
	 * @param before the version before, or {@code null}
	 */
	record SegmentFacts(CompetitionView competition, EventView event, SegmentView segment,
			List<ClosedPerformance> closed, int starters, @Nullable Standing before) {
	}

	/**
	 * What the standing of an event is made of.
	 *
	 * @param segments one standing a segment in order, {@code null} where none is yet
	 * @param field who has left the event, and who is still to skate
	 * @param before the version before, or {@code null}
	 */
	record EventFacts(CompetitionView competition, EventView event, List<@Nullable Standing> segments, EventField field,
			@Nullable Standing before) {

		/**
		 * The last segment that has begun: how far the event is, is how far that one is.
		 */
		public Standing last() {
			return this.segments.stream()
				.filter(Objects::nonNull)
				.reduce((earlier, later) -> later)
				.orElseThrow(() -> new IllegalStateException("An event is combined once a segment has a standing"));
		}

	}

}
