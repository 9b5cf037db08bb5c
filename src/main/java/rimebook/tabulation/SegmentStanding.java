package rimebook.tabulation;

import java.util.List;
import java.util.Optional;

/**
 * The standing of one segment.
 *
 * @param method how it was made
 * @param judges number of judges, 0 while nobody has been marked
 * @param rows placed teams in order of place, then those without a place by status;
 * within a place or status by identifier
 */
public record SegmentStanding(PlacementRules.PlacementMethod method, int judges, List<PlacedEntry> rows) {

	public SegmentStanding {
		rows = List.copyOf(rows);
	}

	/**
	 * Find one team.
	 * @param entry identifier
	 * @return its row, if it is in the standing
	 */
	public Optional<PlacedEntry> row(String entry) {
		return this.rows.stream().filter((row) -> row.entry().equals(entry)).findFirst();
	}

	/**
	 * Return the place that a team on the judges' cards occupies: its own or, where it
	 * was disqualified after being marked and the others keep theirs, the one left empty.
	 * A combination that leaves gaps needs the latter.
	 * @param entry identifier
	 * @return the place from 1, if the team is on the cards
	 */
	public Optional<Integer> occupiedPlace(String entry) {
		return row(entry).map(PlacedEntry::figures).map((own) -> 1 + (int) this.rows.stream().filter((row) -> {
			Figures figures = row.figures();
			return figures != null && Ranking.Contender.compare(figures.measures(), own.measures()) < 0;
		}).count());
	}

}
