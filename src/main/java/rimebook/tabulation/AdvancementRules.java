package rimebook.tabulation;

import rimebook.wording.Sentence;

/**
 * Who goes on from a round to the next segment.
 *
 * @param perGroup how many advance from each group
 * @param ties what becomes of teams that share the last advancing place
 * @param vacancies whether others move up for teams that withdraw afterwards
 */
public record AdvancementRules(int perGroup, LastPlaceTies ties, Vacancies vacancies) {

	/**
	 * Check the number.
	 * @throws TabulationException {@code advancing-out-of-range}: fewer than one
	 */
	public AdvancementRules {
		if (perGroup < 1) {
			throw TabulationException.refused("advancing-out-of-range",
					Sentence.of("tabulation.advancing-out-of-range", perGroup));
		}
	}

	/**
	 * Return rules with this number and the default of every other setting.
	 * @param perGroup how many advance from each group
	 * @return the rules
	 */
	public static AdvancementRules best(int perGroup) {
		return new AdvancementRules(perGroup, LastPlaceTies.ALL_ADVANCE, Vacancies.LEAVE);
	}

	/**
	 * Return these rules with another treatment of shared places.
	 * @param other the treatment
	 * @return a changed copy
	 */
	public AdvancementRules withTies(LastPlaceTies other) {
		return new AdvancementRules(this.perGroup, other, this.vacancies);
	}

	/**
	 * Return these rules with another treatment of vacancies.
	 * @param other the treatment
	 * @return a changed copy
	 */
	public AdvancementRules withVacancies(Vacancies other) {
		return new AdvancementRules(this.perGroup, this.ties, other);
	}

	/**
	 * What becomes of teams that share the last advancing place of a round. In the
	 * examples two advance and the places are {@code A 1, B 2, C 2, D 4}.
	 */
	public enum LastPlaceTies {

		/**
		 * All of them advance: {@code A, B, C} (default; Grand Prix and Olympic team
		 * rules, as reported by ifsmagazines.com in 2018).
		 */
		ALL_ADVANCE,

		/** None of them advances: {@code A}. */
		NONE_ADVANCES

	}

	/**
	 * Whether somebody moves up where a team that has advanced withdraws before the next
	 * segment. In the examples two of {@code A 1, B 2, C 3} advance and B withdraws.
	 */
	public enum Vacancies {

		/**
		 * Nobody does: {@code A} (default; so the organisers of the 2014 Worlds decided).
		 */
		LEAVE,

		/**
		 * The next team of the same round does: {@code A, C} (1997 Worlds, men: the
		 * winner of the short programme withdrew and the free skating still had 24
		 * starters).
		 */
		FILL

	}

}
