package rimebook.tabulation;

/**
 * Writes whole hundredths, the unit of every mark, ordinal, factor and total here, as
 * decimal text that never passes through floating point.
 */
public final class Hundredths {

	/** One whole: an ordinal of 1, a factor of 1.0. */
	public static final int ONE = 100;

	private Hundredths() {
	}

	/**
	 * Write without needless decimals, as ordinals and their totals are printed.
	 * @param hundredths the figure
	 * @return {@code 300 -> "3"}, {@code 150 -> "1.5"}, {@code -75 -> "-0.75"}
	 */
	public static String plain(int hundredths) {
		return (hundredths % ONE == 0) ? String.valueOf(hundredths / ONE) : decimal(hundredths);
	}

	/**
	 * Write with one decimal at least, as marks and factored totals are printed.
	 * @param hundredths the figure
	 * @return {@code 560 -> "5.6"}, {@code 300 -> "3.0"}, {@code 75 -> "0.75"}
	 */
	public static String decimal(int hundredths) {
		int size = Math.abs(hundredths);
		int rest = size % ONE;
		String decimals = (rest % 10 == 0) ? String.valueOf(rest / 10) : ((rest < 10) ? "0" : "") + rest;
		return ((hundredths < 0) ? "-" : "") + size / ONE + "." + decimals;
	}

}
