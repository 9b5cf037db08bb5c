package rimebook.tabulation.points;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;

import rimebook.tabulation.TabulationException;

/**
 * A number of points with exactly two decimals. A published figure is always one of
 * these: whatever is divided or multiplied is rounded to two decimals at once, halves
 * away from zero.
 *
 * @param hundredths {@code 6513} for 65.13
 */
public record Points(int hundredths) implements Comparable<Points> {

	/** No points. */
	public static final Points ZERO = new Points(0);

	private static final int DECIMALS = 2;

	private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,7}(?:\\.\\d{1,2})?");

	/**
	 * Read a number.
	 * @param text digits, at most two of them behind a point; a sign may lead
	 * @return the points
	 * @throws TabulationException {@code not-points}
	 */
	public static Points parse(String text) {
		if (!NUMBER.matcher(text).matches()) {
			throw Refusal.notPoints(text);
		}
		return rounded(new BigDecimal(text));
	}

	static Points sum(Collection<Points> parts) {
		return parts.stream().reduce(ZERO, Points::plus);
	}

	/** Write a sum: {@code 7.75 - 0.47 + 1.20}. */
	static String terms(List<Points> parts) {
		StringBuilder terms = new StringBuilder();
		for (Points part : parts) {
			boolean negative = part.compareTo(ZERO) < 0;
			terms.append(terms.isEmpty() ? part : (negative ? " - " : " + ") + (negative ? ZERO.minus(part) : part));
		}
		return terms.toString();
	}

	private static Points rounded(BigDecimal exact) {
		return new Points(exact.setScale(DECIMALS, RoundingMode.HALF_UP).movePointRight(DECIMALS).intValueExact());
	}

	/**
	 * Add.
	 * @param other as many again
	 * @return the sum
	 */
	public Points plus(Points other) {
		return new Points(Math.addExact(this.hundredths, other.hundredths));
	}

	/**
	 * Subtract.
	 * @param other how many less
	 * @return the difference
	 */
	public Points minus(Points other) {
		return new Points(Math.subtractExact(this.hundredths, other.hundredths));
	}

	/** Divide and round; {@code 4.07 / 5 -> 0.81}, {@code -29.00 / 8 -> -3.63}. */
	Points dividedBy(int divisor) {
		BigDecimal exact = BigDecimal.valueOf(this.hundredths);
		return new Points(exact.divide(BigDecimal.valueOf(divisor), 0, RoundingMode.HALF_UP).intValueExact());
	}

	/** Multiply by a factor in hundredths and round; {@code 7.50 x 133 -> 9.98}. */
	Points times(int factor) {
		return rounded(exactProduct(factor));
	}

	BigDecimal exactProduct(int factor) {
		return toDecimal().multiply(BigDecimal.valueOf(factor, DECIMALS));
	}

	boolean isBetween(int least, int most) {
		return this.hundredths >= least && this.hundredths <= most;
	}

	/**
	 * Return the same number as a decimal.
	 * @return with two places
	 */
	public BigDecimal toDecimal() {
		return BigDecimal.valueOf(this.hundredths, DECIMALS);
	}

	@Override
	public int compareTo(Points other) {
		return Integer.compare(this.hundredths, other.hundredths);
	}

	/**
	 * Write as on a score sheet.
	 * @return always with two decimals: {@code 65.10}, {@code -0.05}
	 */
	@Override
	public String toString() {
		return toDecimal().toPlainString();
	}

}
