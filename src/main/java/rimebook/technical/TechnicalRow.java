package rimebook.technical;

import java.util.UUID;

import rimebook.points.CalledElement;
import rimebook.points.TechnicalDesk;
import rimebook.tabulation.points.JudgedElement;

/**
 * One called element at the technical desk.
 *
 * @param name the code in words
 * @param worth whether it counts
 * @param base its base value with two decimals, empty where it has none
 * @param options what its code can become
 */
record TechnicalRow(UUID id, int number, String code, String name, JudgedElement.ElementWorth worth, String base,
		boolean review, TechnicalDesk.CodeOptions options) {

	static TechnicalRow of(CalledElement element, String name, String base, TechnicalDesk.CodeOptions options) {
		return new TechnicalRow(element.id(), element.number(), element.code(), name, element.worth(), base,
				element.review(), options);
	}

	/** Tell whether judges have to grade it. */
	public boolean counts() {
		return this.worth == JudgedElement.ElementWorth.COUNTS;
	}

}
