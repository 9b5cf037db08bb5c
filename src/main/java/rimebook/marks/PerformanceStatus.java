package rimebook.marks;

/** Where a performance stands, and the moves that are legal from there. */
public enum PerformanceStatus {

	/** In the starting order, not called yet. */
	WAITING,

	/** Called; judges may send and change their cards. */
	ON_ICE,

	/**
	 * All cards are in and the referee closed them; only a correction changes them now.
	 */
	CLOSED,

	/**
	 * Its closed cards were opened again: judges may change them, until they are closed
	 * once more. What was published stays.
	 */
	REOPENED,

	/** Will not skate this segment; the starting number stays as a gap. */
	WITHDRAWN,

	/** Started but could not complete the programme: no marks, no row of zeros. */
	NOT_FINISHED,

	/** Removed from the results by the referee. */
	DISQUALIFIED;

	/** Tell whether the referee may move a performance from here to the next status. */
	public boolean canBecome(PerformanceStatus next) {
		return switch (this) {
			case WAITING -> next == ON_ICE || next == WITHDRAWN || next == DISQUALIFIED;
			case ON_ICE ->
				next == CLOSED || next == WAITING || next == WITHDRAWN || next == NOT_FINISHED || next == DISQUALIFIED;
			case CLOSED -> next == REOPENED || next == DISQUALIFIED;
			case REOPENED -> next == CLOSED || next == DISQUALIFIED;
			case WITHDRAWN, NOT_FINISHED, DISQUALIFIED -> false;
		};
	}

	/** Tell whether nothing more is expected of the performance in its segment. */
	public boolean isDone() {
		return this != WAITING && !takesCards();
	}

	/** Tell whether the referee ended it, so that no marks count for it. */
	boolean isEndedWithoutMarks() {
		return this == WITHDRAWN || this == NOT_FINISHED || this == DISQUALIFIED;
	}

	/** Tell whether judges may send and change their cards. */
	public boolean takesCards() {
		return this == ON_ICE || this == REOPENED;
	}

}
