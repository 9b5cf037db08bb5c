package rimebook.tabulation;

/** The ordinals of teams that are level on one judge's card. */
public enum SharedOrdinals {

	/** The better ordinal for all, the next ones skipped: {@code 1, 1, 3} (default). */
	BETTER_THEN_SKIP,

	/** The mean of the ordinals they occupy: {@code 1.5, 1.5, 3}. */
	MEAN;

	/**
	 * Return the ordinal, in hundredths, of each of {@code level} teams behind
	 * {@code better} others.
	 */
	int ordinal(int better, int level) {
		int best = (better + 1) * Hundredths.ONE;
		return (this == MEAN) ? best + (level - 1) * Hundredths.ONE / 2 : best;
	}

}
