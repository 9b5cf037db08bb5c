package rimebook.tabulation.points;

import rimebook.tabulation.TabulationException;

/**
 * A programme component and what its panel mark is multiplied by.
 *
 * @param name as on the sheet
 * @param factor hundredths ({@code 133 = 1.33})
 * @param source where the factor comes from
 */
public record ComponentRule(String name, int factor, RuleSource source) {

	/** The highest factor: 100.00. */
	static final int HIGHEST_FACTOR = 10_000;

	/**
	 * Check the rule.
	 * @throws TabulationException {@code component-missing} or
	 * {@code factor-out-of-range}: not 0.01 to 100.00
	 */
	public ComponentRule {
		if (name.isBlank()) {
			throw Refusal.blankComponent();
		}
		if (factor < 1 || factor > HIGHEST_FACTOR) {
			throw Refusal.factorOutOfRange(name, factor);
		}
	}

	String factorText() {
		return new Points(this.factor).toString();
	}

}
