package rimebook.points;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.ElementWorth;

/**
 * A called element.
 *
 * @param number which one, from 1; for a further element the place it takes
 * @param further whether it is put in
 * @param code as called, {@code null} where there is none
 * @param worth whether it counts, and if not, why
 */
public record ElementAmendment(int number, boolean further, @Nullable String code,
		ElementWorth worth) implements SheetAmendment {

	/** The same place with nothing in it. */
	public static ElementAmendment nothing(int number, boolean further) {
		return new ElementAmendment(number, further, null, ElementWorth.COUNTS);
	}

	/** The same place with what stands in a list. */
	ElementAmendment holding(CalledElement element) {
		return new ElementAmendment(this.number, this.further, element.code(), element.worth());
	}

	@Override
	public String list() {
		return "called elements";
	}

	@Override
	public String place() {
		return this.further ? "further element as " + this.number : "element " + this.number;
	}

	@Override
	public String words() {
		if (this.code == null) {
			return "nothing";
		}
		return (this.worth == ElementWorth.COUNTS) ? this.code : this.code + " (" + this.worth.words() + ")";
	}

}
