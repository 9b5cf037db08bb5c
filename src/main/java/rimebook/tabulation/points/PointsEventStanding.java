package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.EntryStatus;
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
	 * @param place from 1, or none for a team that is not placed
	 * @param shared whether other teams have the same place
	 * @param entry identifier
	 * @param status how the team came through the event
	 * @param complete whether it has a total in every segment; one that has not is listed
	 * behind all that have, by its place in the last segment it reached
	 * @param total of all its segments so far
	 * @param segments place and total in each segment, null where it has none
	 * @param reason what parted the team from its neighbours
	 */
	public record PointsEventRow(@Nullable Integer place, boolean shared, String entry, EntryStatus status,
			boolean complete, Points total, List<EntryTotals.@Nullable SegmentTotal> segments, Reason reason) {

		public PointsEventRow {
			segments = Collections.unmodifiableList(new ArrayList<>(segments));
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
			if (this.place == null) {
				return WhySentence.unplaced(this.status);
			}
			return WhySentence.of(this.place, this.reason, new TotalWords(this), names);
		}

	}

}
