package rimebook.points;

import org.jspecify.annotations.Nullable;

import rimebook.performances.Amendment;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.JudgedElement;
import rimebook.wording.Sentence;

/** A place in what the technical panel sent. */
public sealed interface SheetAmendment extends Amendment {

	/** Which one, from 1; for a further one the place that it takes. */
	int number();

	/** Whether it is put in beside what is there. */
	boolean further();

	@Override
	default boolean isOfTechnicalPanel() {
		return true;
	}

	/** The place in a list of that size, from 0. */
	default int index(int size) {
		if (number() < 1 || number() > size) {
			throw new RuleViolationException("line-unknown", "line", Sentence.of("points.sheet-line-unknown"));
		}
		return number() - 1;
	}

	/**
	 * A called element.
	 *
	 * @param number which one, from 1; for a further element the place it takes
	 * @param further whether it is put in
	 * @param code as called, {@code null} where there is none
	 * @param worth whether it counts, and if not, why
	 */
	record ElementAmendment(int number, boolean further, @Nullable String code,
			JudgedElement.ElementWorth worth) implements SheetAmendment {

		/** The same place with nothing in it. */
		public static ElementAmendment nothing(int number, boolean further) {
			return new ElementAmendment(number, further, null, JudgedElement.ElementWorth.COUNTS);
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
		public Sentence spokenPlace() {
			return Sentence.of(this.further ? "note.place.further-element" : "note.place.element", this.number);
		}

		@Override
		public Sentence spoken() {
			if (this.code == null) {
				return Sentence.of("note.nothing");
			}
			return (this.worth == JudgedElement.ElementWorth.COUNTS) ? Sentence.said(this.code)
					: Sentence.of("note.code-and-worth", this.code, this.worth.spoken());
		}

	}

	/**
	 * A deduction that was noted.
	 *
	 * @param number which one, from 1
	 * @param further whether it is put in
	 * @param item its short name in the rule set's table, {@code null} where there is
	 * none
	 * @param count how many, or how much, in the unit of the item; 0 where there is none
	 */
	record DeductionAmendment(int number, boolean further, @Nullable String item, int count) implements SheetAmendment {

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
		public Sentence spokenPlace() {
			return this.further ? Sentence.of("note.place.further-deduction")
					: Sentence.of("note.place.deduction", this.number);
		}

		@Override
		public Sentence spoken() {
			return (this.item == null) ? Sentence.of("note.nothing")
					: Sentence.of("note.item-and-count", this.item, this.count);
		}

	}

}
