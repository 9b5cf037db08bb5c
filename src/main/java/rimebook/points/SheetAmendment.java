package rimebook.points;

import rimebook.performances.Amendment;
import rimebook.shared.RuleViolationException;

/** A place in what the technical panel sent. */
sealed interface SheetAmendment extends Amendment permits ElementAmendment, DeductionAmendment {

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
			throw new RuleViolationException("line-unknown", "line",
					"That performance has no such line; choose one that it has.");
		}
		return number() - 1;
	}

}
