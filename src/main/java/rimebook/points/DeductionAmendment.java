package rimebook.points;

import org.jspecify.annotations.Nullable;

/**
 * A deduction that was noted.
 *
 * @param number which one, from 1
 * @param further whether it is put in
 * @param item its short name in the rule set's table, {@code null} where there is none
 * @param count how many, or how much, in the unit of the item; 0 where there is none
 */
public record DeductionAmendment(int number, boolean further, @Nullable String item,
		int count) implements SheetAmendment {

	/** The same place with nothing in it. */
	public static DeductionAmendment nothing(int number, boolean further) {
		return new DeductionAmendment(number, further, null, 0);
	}

	/** The same place with what stands in a list. */
	DeductionAmendment holding(NotedDeduction noted) {
		return new DeductionAmendment(this.number, this.further, noted.item(), noted.count());
	}

	@Override
	public String list() {
		return "deductions";
	}

	@Override
	public String place() {
		return this.further ? "further deduction" : "deduction " + this.number;
	}

	@Override
	public String words() {
		return (this.item == null) ? "nothing" : this.item + " " + this.count;
	}

}
