package rimebook.paper;

/** What a keying of a paper card came to at the moment it was written down. */
enum KeyingOutcome {

	/** It is the first; somebody else has to key the same paper. */
	WAITING,

	/** Another keying, or the card from the tablet, says something else. */
	DIFFERS,

	/** It says the same as another person's or as the tablet: the card is received. */
	AGREED,

	/** Somebody looked at the paper again and said what is on it. */
	SETTLED;

	/** Tell whether nothing is left to do after it. */
	boolean isDone() {
		return this == AGREED || this == SETTLED;
	}

}
