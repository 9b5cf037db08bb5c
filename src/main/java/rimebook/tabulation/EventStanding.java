package rimebook.tabulation;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The standing of an event.
 *
 * @param factors of each segment, hundredths
 * @param rows placed teams in order of place, then those without a place by status;
 * within a place or status by identifier
 */
public record EventStanding(List<Integer> factors, List<EventRow> rows) {

	public EventStanding {
		factors = List.copyOf(factors);
		rows = List.copyOf(rows);
	}

	/**
	 * Find one team.
	 * @param entry identifier
	 * @return its row, if it is in the standing
	 */
	public Optional<EventRow> row(String entry) {
		return this.rows.stream().filter((row) -> row.entry().equals(entry)).findFirst();
	}

}
