package rimebook.tabulation.points;

import java.util.List;
import java.util.OptionalInt;

import rimebook.tabulation.TabulationException;

/**
 * One item of a deduction table.
 *
 * @param item short name, unique in the table
 * @param name as on the sheet
 * @param basis what the amount depends on
 * @param unit what is counted
 * @param steps ascending; exactly one, from 1, unless the basis is steps
 * @param most the highest count that is proposed for one deduction, 1 to {@link #MOST}
 * @param source where the item comes from
 */
public record DeductionRule(String item, String name, DeductionBasis basis, DeductionUnit unit,
		List<DeductionStep> steps, int most, PointsRules.RuleSource source) {

	/** The highest count of one deduction. */
	public static final int MOST = 1000;

	/**
	 * Check the rule.
	 * @throws TabulationException {@code deduction-item-missing} or
	 * {@code deduction-steps}: none, not ascending from at least 1, negative, or several
	 * without steps
	 */
	public DeductionRule {
		steps = List.copyOf(steps);
		if (item.isBlank()) {
			throw Refusal.blankDeduction();
		}
		if (!areAscending(steps) || (basis != DeductionBasis.STEPS && (steps.size() > 1 || steps.get(0).from() != 1))) {
			throw Refusal.deductionSteps(item);
		}
	}

	/** One that the table gives no highest count for. */
	public DeductionRule(String item, String name, DeductionBasis basis, DeductionUnit unit, List<DeductionStep> steps,
			PointsRules.RuleSource source) {
		this(item, name, basis, unit, steps, MOST, source);
	}

	private static boolean areAscending(List<DeductionStep> steps) {
		int before = 0;
		for (DeductionStep step : steps) {
			if (step.from() <= before || !step.points().isBetween(0, ElementValue.MOST)) {
				return false;
			}
			before = step.from();
		}
		return before > 0;
	}

	/**
	 * Return the points for so many.
	 * @param count in the unit of the rule, 1 to 1000
	 * @return how much is taken off; in steps nothing below the first
	 * @throws TabulationException {@code deduction-out-of-range}
	 */
	public Points points(int count) {
		if (count < 1 || count > MOST) {
			throw Refusal.deductionOutOfRange(this.item, count, Points.ZERO);
		}
		if (this.basis != DeductionBasis.STEPS) {
			return new Points(count * this.steps.get(0).points().hundredths());
		}
		return this.steps.stream()
			.filter((step) -> step.from() <= count)
			.reduce((lower, higher) -> higher)
			.map(DeductionStep::points)
			.orElse(Points.ZERO);
	}

	/**
	 * Apply the rule.
	 * @param count in the unit of the rule, 1 to 1000
	 * @param notedBy who noted it
	 * @return the deduction
	 * @throws TabulationException {@code deduction-out-of-range}
	 */
	public Deduction take(int count, String notedBy) {
		return new Deduction(this.item, count, points(count), notedBy);
	}

	/** Say the rule with its source. */
	String words() {
		String amounts = (this.basis == DeductionBasis.STEPS)
				? String.join(", ", this.steps.stream().map((step) -> step.points() + " from " + step.from()).toList())
				: this.steps.get(0).points() + " " + this.basis.words();
		return this.name + ": " + amounts + " (" + this.unit.words() + "); " + this.source.remark();
	}

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

	/**
	 * What is counted for a deduction.
	 *
	 * @param words for people, for example "skaters down in one fall"
	 * @param seconds how many seconds one of it stands for, at least 1; empty where it is
	 * no span of time, so that no clock can tell how many there are
	 */
	public record DeductionUnit(String words, OptionalInt seconds) {

		/**
		 * Check the unit.
		 * @throws TabulationException {@code deduction-seconds}: less than one
		 */
		public DeductionUnit {
			if (seconds.isPresent() && seconds.getAsInt() < 1) {
				throw Refusal.deductionSeconds(words);
			}
		}

		/**
		 * Return a unit that is no span of time.
		 * @param words for people
		 * @return the unit
		 */
		public static DeductionUnit of(String words) {
			return new DeductionUnit(words, OptionalInt.empty());
		}

	}

	/**
	 * From how many on an amount holds.
	 *
	 * @param from in the unit of the rule, at least 1
	 * @param points for each item or skater, or in steps for all together
	 */
	public record DeductionStep(int from, Points points) {

	}

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
		 * {@code deduction-out-of-range}: a count that is not 1 to 1000, points that are
		 * not 0.00 to 1000.00
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

}
