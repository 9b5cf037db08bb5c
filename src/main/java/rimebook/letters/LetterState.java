package rimebook.letters;

/** How far a letter has come. */
public enum LetterState {

	/** It goes by itself, now or after a pause. */
	WAITING,

	/** A service is handing it to the mail server. */
	SENDING,

	/** The mail server took it. */
	SENT,

	/** The mail server refused it, or could not be reached five times. */
	REFUSED,

	/** It was not handed over, since its personal link could not be given. */
	HELD,

	/**
	 * The service ended, or the line broke, after it was handed over and before the
	 * answer: nobody here knows whether it went.
	 */
	DOUBTFUL,

	/** Somebody took it back before it went. */
	CANCELLED,

	/** It was laid out to be printed. */
	PRINTED;

	/** Tell whether somebody may send it again: nothing goes by itself any more. */
	public boolean maySendAgain() {
		return this != WAITING && this != SENDING && this != PRINTED;
	}

	/** Tell whether somebody has to look at it. */
	public boolean isTrouble() {
		return this == REFUSED || this == HELD || this == DOUBTFUL;
	}

}
