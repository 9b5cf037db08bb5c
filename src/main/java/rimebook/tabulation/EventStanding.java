package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
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
	 * @param entry identifier
	 * @param status how the team came through the event
	 * @param placing its place, if it has one; a team that has no place in some segment
	 * is listed behind all that have
	 * @param total factored places added up, hundredths; of an incomplete team what it
	 * has so far, which compares with nobody else's total
	 * @param places in each segment, null where it has none
	 * @param factored each place times its factor, hundredths, null where it has none
	 */
	public record EventRow(String entry, EntryStatus status, Placing placing, int total, List<@Nullable Integer> places,
			List<@Nullable Integer> factored) {

		public EventRow {
			places = Collections.unmodifiableList(new ArrayList<>(places));
			factored = Collections.unmodifiableList(new ArrayList<>(factored));
		}

		/**
		 * Return whether it has a place in every segment.
		 * @return {@code false} where one is missing so far or for good
		 */
		public boolean complete() {
			return this.factored.stream().allMatch(Objects::nonNull);
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
		 * @return the sentence
		 */
		public Sentence why(UnaryOperator<String> names) {
			return WhySentence.of(this, names);
		}

	}

}
