package rimebook.tabulation.points;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Placing;
import rimebook.tabulation.Reason;
import rimebook.tabulation.WhySentence;
import rimebook.wording.Sentence;

/**
 * The standing of one segment.
 *
 * @param tieBreak what parted equal totals
 * @param judges seats of the panel, 0 while nobody has been marked
 * @param rows placed teams in order of place, then those without a place by status;
 * within a place or status by identifier
 */
public record PointsStanding(SegmentRules.TieBreak tieBreak, int judges, List<ScoredEntry> rows) {

	public PointsStanding {
		rows = List.copyOf(rows);
	}

	/**
	 * Find one team.
	 * @param entry identifier
	 * @return its row, if it is in the standing
	 */
	public Optional<ScoredEntry> row(String entry) {
		return this.rows.stream().filter((row) -> row.entry().equals(entry)).findFirst();
	}

	/**
	 * One team in the standing of a segment.
	 *
	 * @param entry identifier
	 * @param status how the team came through
	 * @param placing its place, if it has one
	 * @param score with all it was made of, or none without marks
	 */
	public record ScoredEntry(String entry, EntryStatus status, Placing placing, @Nullable PerformanceScore score) {

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
		 * Return what the team brings into the result of the event.
		 * @return place and total, or none without a place
		 */
		public Optional<EntryTotals.SegmentTotal> segmentTotal() {
			Integer place = place();
			return (place == null || this.score == null) ? Optional.empty()
					: Optional.of(new EntryTotals.SegmentTotal(place, this.score.total()));
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
		 * @return for example "2nd: 65.13 points (35.86 for the elements, 29.27 for the
		 * components); behind A, who had 66.01, 0.88 more; ahead of C, who had the same
		 * total but 34.90 for the elements."
		 */
		public Sentence why(UnaryOperator<String> names) {
			Integer place = place();
			return (place == null || this.score == null) ? WhySentence.unplaced(this.status)
					: WhySentence.of(place, reason(), new ScoreWords(this.score), names);
		}

	}

}
