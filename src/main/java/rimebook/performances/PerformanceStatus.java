package rimebook.performances;

import java.util.Locale;

import rimebook.wording.Sentence;

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
	DISQUALIFIED,

	/**
	 * Skated, but the whole programme is skated again: nothing of it counts. What was
	 * sent and noted stays on record; the re-skate is a performance of its own.
	 */
	SET_ASIDE;

	/** Tell whether the referee may move a performance from here to the next status. */
	public boolean canBecome(PerformanceStatus next) {
		return switch (this) {
			case WAITING -> next == ON_ICE || next == WITHDRAWN || next == DISQUALIFIED;
			case ON_ICE -> next == CLOSED || next == WAITING || next == WITHDRAWN || next == NOT_FINISHED
					|| next == DISQUALIFIED || next == SET_ASIDE;
			case SET_ASIDE -> next == ON_ICE;
			case CLOSED -> next == REOPENED;
			case REOPENED -> next == CLOSED;
			case WITHDRAWN, NOT_FINISHED, DISQUALIFIED -> false;
		};
	}

	/**
	 * Tell whether two officials may move a performance from here to the next status:
	 * what was skated may not count after all, and what was ended wrongly goes on.
	 */
	public boolean canBeCorrectedTo(PerformanceStatus next) {
		return switch (this) {
			case CLOSED -> next.isEndedWithoutMarks();
			case WITHDRAWN, NOT_FINISHED, DISQUALIFIED -> next != this && next != REOPENED && next != SET_ASIDE;
			case WAITING, ON_ICE, REOPENED, SET_ASIDE -> false;
		};
	}

	/** How the team came through, in words: "marks count", "not finished". */
	public Sentence spoken() {
		return Sentence.of("note.status." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
	}

	/** Tell whether the team has no marks that count, and will have none. */
	public boolean isEndedWithoutMarks() {
		return this == WITHDRAWN || this == NOT_FINISHED || this == DISQUALIFIED;
	}

	/** Tell whether nothing more is expected of the performance in its segment. */
	public boolean isDone() {
		return this != WAITING && !takesCards();
	}

	/** Tell whether judges may send and change their cards. */
	public boolean takesCards() {
		return this == ON_ICE || this == REOPENED;
	}

}
