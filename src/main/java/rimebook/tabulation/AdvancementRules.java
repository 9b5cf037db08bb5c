package rimebook.tabulation;

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
					"The number of teams that advance from each group must be 1 or more; got " + perGroup + ".");
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

}
