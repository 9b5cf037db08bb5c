package rimebook.tabulation.points;

/** What the amount of a deduction depends on. */
public enum DeductionBasis {

	/** The same amount each time it happens, or for each unit of it. */
	PER_ITEM("per item"),

	/** The same amount for each skater concerned. */
	PER_SKATER("per skater"),

	/** An amount for so many and more, another for still more. */
	STEPS("steps");

	private final String words;

	DeductionBasis(String words) {
		this.words = words;
	}

	/**
	 * Return the word used in tables.
	 * @return for example {@code per skater}
	 */
	public String words() {
		return this.words;
	}

}
