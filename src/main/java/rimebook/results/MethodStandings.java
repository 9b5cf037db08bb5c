package rimebook.results;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.performances.ClosedCards;
import rimebook.published.Standing;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * Makes standings of closed cards in one way of judging: pure functions of what they are
 * given, so that the same facts give the same bytes.
 */
public interface MethodStandings {

	/** Tell whether it makes the standings of events that are judged like this one. */
	boolean isFor(EventView event);

	/** Name the rule set of an event, as its standing will. */
	Sentence ruleSet(EventView event);

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
	default Standing.Outlook outlook(SegmentFacts facts, List<EntryId> waiting, EventFacts whole) {
		return Standing.Outlook.NONE;
	}

	/**
	 * What the standing of a segment is made of.
	 *
	 * @param event the event with as many judges as count in the segment
	 * @param entries all of the event, withdrawn ones among them
	 * @param field who has skated it, and how many do
	 * @param before the version before, or {@code null}
	 */
	record SegmentFacts(CompetitionView competition, EventView event, List<EntryView> entries, SegmentView segment,
			SegmentField field, @Nullable Standing before) {
	}

	/**
	 * How far the field of a segment has come.
	 *
	 * @param closed the performances that are done, by starting number
	 * @param starters how many teams of the starting order did not withdraw
	 */
	record SegmentField(List<ClosedCards.ClosedPerformance> closed, int starters) {

		/** How many of them have started. */
		public int started() {
			return ClosedCards.ClosedPerformance.started(this.closed);
		}

	}

	/**
	 * What the standing of an event is made of.
	 *
	 * @param entries all of the event, withdrawn ones among them
	 * @param segments one standing a segment in order, {@code null} where none is yet
	 * @param field who has left the event, and who is still to skate
	 * @param before the version before, or {@code null}
	 */
	record EventFacts(CompetitionView competition, EventView event, List<EntryView> entries,
			List<@Nullable Standing> segments, EventField field, @Nullable Standing before) {

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

	/**
	 * What no standing of a segment tells about the teams of an event: who has left it,
	 * and who is still to skate.
	 *
	 * @param withdrawn the entries that have withdrawn, also between two segments
	 * @param toSkate the entries still to skate the segment that is under way
	 */
	record EventField(Set<String> withdrawn, Set<String> toSkate) {

		public EventField {
			withdrawn = Set.copyOf(withdrawn);
			toSkate = Set.copyOf(toSkate);
		}

		/** The field of these entries. */
		static EventField of(List<EntryView> entries, List<EntryId> toSkate) {
			return new EventField(
					texts(entries.stream().filter((entry) -> !entry.isEntered()).map(EntryView::id).toList()),
					texts(toSkate));
		}

		private static Set<String> texts(List<EntryId> entries) {
			return entries.stream().map(EntryId::toString).collect(Collectors.toSet());
		}

		/** The same field if that team had withdrawn. */
		EventField without(String entry) {
			Set<String> gone = new HashSet<>(this.withdrawn);
			gone.add(entry);
			return new EventField(gone, this.toSkate);
		}

		/** The same field if that team had not withdrawn. */
		EventField with(String entry) {
			Set<String> gone = new HashSet<>(this.withdrawn);
			gone.remove(entry);
			return new EventField(gone, this.toSkate);
		}

		/**
		 * How each team that is in a standing came through the event so far: as in the
		 * first segment that it did not skate to the end, and withdrawn if it has left
		 * since, so that it has no final place, whatever was skated before.
		 * @param segments one standing a segment, {@code null} where none is yet
		 */
		public Map<String, EntryStatus> statuses(List<@Nullable Standing> segments) {
			Map<String, EntryStatus> statuses = new HashMap<>();
			for (Standing standing : segments) {
				if (standing != null) {
					standing.rows()
						.forEach((row) -> statuses.merge(row.entry(), EntryStatus.valueOf(row.status()),
								(earlier, later) -> (earlier == EntryStatus.SKATED) ? later : earlier));
				}
			}
			statuses.replaceAll((entry, status) -> left(entry, status) ? EntryStatus.WITHDRAWN : status);
			return statuses;
		}

		private boolean left(String entry, EntryStatus status) {
			return status == EntryStatus.SKATED && this.withdrawn.contains(entry);
		}

		/**
		 * Tell whether a team that is in the event is still to skate: it has no place
		 * yet.
		 */
		public boolean waits(String entry, EntryStatus status) {
			return status == EntryStatus.SKATED && this.toSkate.contains(entry);
		}

		/** The status as a row of the combined standing has it. */
		public String words(String entry, EntryStatus status) {
			return waits(entry, status) ? Standing.WAITING : status.name();
		}

		/**
		 * What a row of the combined standing says of its place.
		 * @param why what explains the place it would have
		 */
		public Sentence why(String entry, EntryStatus status, Sentence why) {
			return waits(entry, status) ? Sentence.of("why.waiting") : why;
		}

	}

}
