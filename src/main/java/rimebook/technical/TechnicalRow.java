package rimebook.technical;

import rimebook.points.CalledElement;
import rimebook.points.TechnicalDesk;
import rimebook.tabulation.points.JudgedElement;

/**
 * One called element at the technical desk.
 *
 * @param name the code in words
 * @param base its base value with two decimals, empty where it has none
 * @param options what its code can become
 */
record TechnicalRow(CalledElement element, String name, String base, TechnicalDesk.CodeOptions options) {

	/** Tell whether judges have to grade it. */
	public boolean counts() {
		return this.element.worth() == JudgedElement.ElementWorth.COUNTS;
	}

}
