package rimebook.tabulation;

/**
 * One criterion in the chain that parts two teams.
 *
 * @param criterion what is compared
 * @param own value of the one, in the unit of the criterion
 * @param theirs value of the other
 */
public record CriterionStep(Criterion criterion, int own, int theirs) {

	/**
	 * Return whether the next criterion has to be asked.
	 * @return {@code true} where both have the same value
	 */
	public boolean isEqual() {
		return this.own == this.theirs;
	}

	/**
	 * Say the step.
	 * @return for example "total of those ordinals: 9 against 10, the lower is better" or
	 * "majority place: both 2"
	 */
	public String words() {
		String name = CriterionWords.name(this.criterion) + ": ";
		if (isEqual()) {
			return name + "both " + CriterionWords.value(this.criterion, this.own);
		}
		return name + CriterionWords.value(this.criterion, this.own) + " against "
				+ CriterionWords.value(this.criterion, this.theirs) + ", the "
				+ (this.criterion.higherIsBetter() ? "higher" : "lower") + " is better";
	}

}
