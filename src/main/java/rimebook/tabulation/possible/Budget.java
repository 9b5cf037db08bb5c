package rimebook.tabulation.possible;

/**
 * How many steps a search may take. Steps are counted and not timed, so that the same
 * question always has the same answer.
 */
final class Budget {

	private int steps;

	Budget(int steps) {
		this.steps = steps;
	}

	/** Take a step; false where none is left. */
	boolean step() {
		return this.steps-- > 0;
	}

}
