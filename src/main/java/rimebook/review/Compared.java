package rimebook.review;

import org.apache.commons.math3.fraction.BigFraction;

/**
 * One mark of a judge beside those that the other judges gave for the same; all in
 * hundredths.
 *
 * @param average of the others
 * @param lowest of the others
 * @param highest of the others
 * @param others how many they are, at least one
 */
record Compared(MarkLine line, int given, BigFraction average, int lowest, int highest, int others) {

	private static final int FEWEST_OTHERS = 2;

	/** How far above the average, negative below. */
	BigFraction difference() {
		return new BigFraction(this.given).subtract(this.average);
	}

	/**
	 * Tell whether the mark is to be pointed out: so far above or below every one of the
	 * others, which one odd mark among them cannot bring about. Of two marks nobody can
	 * say which one is out.
	 */
	boolean isOutlying(int limit) {
		int apart = Math.max(this.lowest - this.given, this.given - this.highest);
		return this.others >= FEWEST_OTHERS && apart >= limit;
	}

}
