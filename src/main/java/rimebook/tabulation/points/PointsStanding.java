package rimebook.tabulation.points;

import java.util.List;
import java.util.Optional;

/**
 * The standing of one segment.
 *
 * @param tieBreak what parted equal totals
 * @param judges seats of the panel, 0 while nobody has been marked
 * @param rows placed teams in order of place, then those without a place by status;
 * within a place or status by identifier
 */
public record PointsStanding(TieBreak tieBreak, int judges, List<ScoredEntry> rows) {

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

}
