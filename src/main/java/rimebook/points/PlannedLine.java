package rimebook.points;

/**
 * A planned element and how far it is.
 *
 * @param number its place in the plan, from 1
 */
public record PlannedLine(int number, String code, State state) {

	/** How far a planned element is. */
	public enum State {

		/** An element of that kind was called. */
		CALLED,

		/** A later one was called, this one was not. */
		PASSED,

		/** The first one after all that were called. */
		NEXT,

		/** Still to come. */
		TO_COME

	}

}
