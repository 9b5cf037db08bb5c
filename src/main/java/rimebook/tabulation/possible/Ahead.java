package rimebook.tabulation.possible;

/**
 * Counts how many teams are ahead of one team in the event, at least and at most, when it
 * is known how many are before it in the segment: those that can be before it as well as
 * behind it are divided in the way that suits best.
 */
final class Ahead {

	private int beforeLeft;

	private int undecided;

	private int fewest;

	private int most;

	/** Undecided teams that must be ahead if they are before, and need not if behind. */
	private int harmful;

	/** Undecided teams that can be ahead if they are before, and cannot if behind. */
	private int useful;

	/**
	 * Begin.
	 * @param before how many teams are before the one in question in the segment
	 */
	Ahead(int before) {
		this.beforeLeft = before;
	}

	/**
	 * Add a team that may be before or behind, or both.
	 * @param before what is so where it is before
	 * @param behind what is so where it is level or behind
	 */
	void add(Side before, Side behind) {
		if (before.isPossible() && behind.isPossible()) {
			this.undecided++;
			this.fewest += behind.mustBeAhead();
			this.most += behind.canBeAhead();
			this.harmful += before.mustBeAhead() - behind.mustBeAhead();
			this.useful += before.canBeAhead() - behind.canBeAhead();
		}
		else {
			Side only = before.isPossible() ? before : behind;
			this.beforeLeft -= before.isPossible() ? 1 : 0;
			this.fewest += only.mustBeAhead();
			this.most += only.canBeAhead();
		}
	}

	/** Whether so many teams can be before at all. */
	boolean isPossible() {
		return this.beforeLeft >= 0 && this.beforeLeft <= this.undecided;
	}

	void noteIn(Extremes extremes, int index) {
		if (isPossible()) {
			int harmless = this.undecided - this.harmful;
			extremes.note(index, 1 + this.fewest + Math.max(0, this.beforeLeft - harmless),
					1 + this.most + Math.min(this.beforeLeft, this.useful));
		}
	}

	/**
	 * A team on one side of another in the segment.
	 *
	 * @param isPossible whether it can be there
	 * @param mustBeAhead 1 where it is then ahead in the event at any rate, else 0
	 * @param canBeAhead 1 where it then may be, else 0
	 */
	record Side(boolean isPossible, int mustBeAhead, int canBeAhead) {

		static final Side NONE = new Side(false, 0, 0);

	}

}
