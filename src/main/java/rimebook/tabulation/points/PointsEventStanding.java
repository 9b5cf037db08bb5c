package rimebook.tabulation.points;

import java.util.List;
import java.util.Optional;

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

}
