package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Placing;
import rimebook.tabulation.Reason;
import rimebook.tabulation.WhySentence;
import rimebook.wording.Sentence;

/**
 * The standing of an event.
 *
 * @param segments how many the event has
 * @param rows placed teams in order of place, then those without a place by status;
 * within a place or status by identifier
 */
public record PointsEventStanding(int segments, List<PointsEventRow> rows) {

	public PointsEventStanding {
		rows = List.copyOf(rows);
	}

	/**
	 * Find one team.
	 * @param entry identifier
	 * @return its row, if it is in the standing
	 */
	public Optional<PointsEventRow> row(String entry) {
		return this.rows.stream().filter((row) -> row.entry().equals(entry)).findFirst();
	}

	/**
	 * One team in the standing of an event.
	 *
	 * @param entry identifier
	 * @param status how the team came through the event
	 * @param placing its place, if it has one; a team that has no total in some segment
	 * is listed behind all that have, by its place in the last segment it reached
	 * @param total of all its segments so far
	 * @param segments place and total in each segment, null where it has none
	 */
	public record PointsEventRow(String entry, EntryStatus status, Placing placing, Points total,
			List<EntryTotals.@Nullable SegmentTotal> segments) {

		public PointsEventRow {
			segments = Collections.unmodifiableList(new ArrayList<>(segments));
		}

		/**
		 * Return whether it has a total in every segment.
		 * @return {@code false} where one is missing so far or for good
		 */
		public boolean complete() {
			return this.segments.stream().allMatch(Objects::nonNull);
		}

		/**
		 * Return the place.
		 * @return from 1, or none for a team that is not placed
		 */
		public @Nullable Integer place() {
			return this.placing.place();
		}

		/**
		 * Return whether other teams have the same place.
		 * @return {@code true} for a shared place
		 */
		public boolean shared() {
			return this.placing.isShared();
		}

		/**
		 * Return what parted the team from its neighbours.
		 * @return no reason for a team without a place
		 */
		public Reason reason() {
			return this.placing.reason();
		}

		/**
		 * Say in one sentence why the team has its place.
		 * @return the sentence, teams called by their identifiers
		 */
		public Sentence why() {
			return why(UnaryOperator.identity());
		}

		/**
		 * Say in one sentence why the team has its place.
		 * @param names turns an identifier into the name people know
		 * @return for example "1st: 195.40 points (65.13 + 130.27); ahead of B, who had
		 * the same total but 129.80 in the last segment."
		 */
		public Sentence why(UnaryOperator<String> names) {
			Integer place = place();
			return (place == null) ? WhySentence.unplaced(this.status)
					: WhySentence.of(place, reason(), new TotalWords(this), names);
		}

	}

}
