package rimebook.panels;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * An interest that an official declared.
 *
 * @param team the team's name
 * @param lastDay the bond's last day, {@code null} while it lasts
 */
public record InterestView(Id id, Kind kind, String team, @Nullable LocalDate lastDay) {

	/** Identity of a declared interest. */
	public record Id(UUID value) implements Serializable {

		/**
		 * Read an identity as it stands in an address.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static Id of(String text) {
			return new Id(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

	/**
	 * What may bind an official to a team so that they do not serve in its event. After
	 * the grounds and terms of Skate Canada rule 2502; the rulebook in force decides.
	 */
	public enum Kind {

		/** Coach or choreographer of the team, now or in the last twelve months. */
		COACH(12),

		/** Close relative of a skater. */
		RELATIVE(0),

		/** Close relative of the team's coach, now or in the last twelve months. */
		RELATIVE_OF_COACH(12),

		/** Skated with a skater of the team in the last twenty-four months. */
		SKATING_PARTNER(24),

		/** A personal relation that can reasonably be seen as a conflict. */
		PERSONAL(0),

		/** Part of the official's income depends on the team's result. */
		LIVELIHOOD(0);

		private final int monthsAfter;

		Kind(int monthsAfter) {
			this.monthsAfter = monthsAfter;
		}

		/** The bond in a few words: "coach or choreographer". */
		public Sentence spoken() {
			return Sentence.of("panels.bond.kind." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
		}

		/** The same in English, as on the record. */
		public String inWords() {
			return spoken().english();
		}

		/** How many months the bond still counts after its last day. */
		public int monthsAfter() {
			return this.monthsAfter;
		}

		/**
		 * Tell whether it binds on that day.
		 * @param lastDay the bond's last day, {@code null} while it lasts
		 */
		boolean bindsOn(LocalDate day, @Nullable LocalDate lastDay) {
			return lastDay == null || !day.isAfter(lastDay.plusMonths(this.monthsAfter));
		}

	}

}
