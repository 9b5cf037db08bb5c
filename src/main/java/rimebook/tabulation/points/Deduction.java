package rimebook.tabulation.points;

import rimebook.tabulation.TabulationException;

/**
 * Points taken off a segment's total.
 *
 * @param item what for
 * @param count how many, or how much, in the unit of its rule; at least 1
 * @param points taken off for all of them together, not negative
 * @param notedBy who noted it; empty where unknown
 */
public record Deduction(String item, int count, Points points, String notedBy) {

	/**
	 * Check the deduction.
	 * @throws TabulationException {@code deduction-item-missing} or
	 * {@code deduction-out-of-range}: a count that is not 1 to 1000, points that are not
	 * 0.00 to 1000.00
	 */
	public Deduction {
		if (item.isBlank()) {
			throw Refusal.blankDeduction();
		}
		if (count < 1 || count > DeductionRule.MOST || !points.isBetween(0, ElementValue.MOST)) {
			throw Refusal.deductionOutOfRange(item, count, points);
		}
	}

	/**
	 * Return a deduction of which only the points are known.
	 * @param item what for
	 * @param points taken off
	 * @return the deduction
	 */
	public static Deduction of(String item, Points points) {
		return new Deduction(item, 1, points, "");
	}

	/**
	 * Write as on a score sheet.
	 * @return for example {@code fall: -2.00 (2)}; the count only where it is not 1
	 */
	public String words() {
		return this.item + ": -" + this.points + ((this.count == 1) ? "" : " (" + this.count + ")");
	}

}
