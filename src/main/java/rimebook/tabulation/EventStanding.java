package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

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

	/**
	 * One team in the standing of an event.
	 *
	 * @param place from 1, or none for a team that is not placed
	 * @param shared whether other teams have the same place
	 * @param entry identifier
	 * @param status how the team came through the event
	 * @param complete whether it has a place in every segment; one that has not is listed
	 * behind all that have
	 * @param total factored places added up, hundredths; of an incomplete team what it
	 * has so far, which compares with nobody else's total
	 * @param places in each segment, null where it has none
	 * @param factored each place times its factor, hundredths, null where it has none
	 * @param reason what parted the team from its neighbours
	 */
	public record EventRow(@Nullable Integer place, boolean shared, String entry, EntryStatus status, boolean complete,
			int total, List<@Nullable Integer> places, List<@Nullable Integer> factored, Reason reason) {

		public EventRow {
			places = Collections.unmodifiableList(new ArrayList<>(places));
			factored = Collections.unmodifiableList(new ArrayList<>(factored));
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
		 * @return the sentence
		 */
		public Sentence why(UnaryOperator<String> names) {
			return WhySentence.of(this, names);
		}

	}

}
