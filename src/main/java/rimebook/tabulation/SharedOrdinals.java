package rimebook.tabulation;

/** The ordinals of teams that are level on one judge's card. */
public enum SharedOrdinals {

	/** The better ordinal for all, the next ones skipped: {@code 1, 1, 3} (default). */
	BETTER_THEN_SKIP,

	/** The mean of the ordinals they occupy: {@code 1.5, 1.5, 3}. */
	MEAN;

	/**
	 * Return the ordinal of teams that are level on a card.
	 * @param better how many others are ranked before them
	 * @param level how many they are, one at least
	 * @return the ordinal of each, hundredths
	 */
	public int ordinal(int better, int level) {
		int best = (better + 1) * Hundredths.ONE;
		return (this == MEAN) ? best + (level - 1) * Hundredths.ONE / 2 : best;
	}

}
