package rimebook.accounts;

/** What is counted day by day ({@link AttemptTally}). */
enum AttemptKind {

	/** A password that does not fit, or of somebody who is shut out. */
	FAILED,

	/** A password that was not even tried, since too many had failed. */
	STOPPED,

	/** A password that a page asked for once more, and that was not the person's. */
	ASKED_AGAIN,

	/** A page or an act that a person's roles do not open. */
	REFUSED,

	/** A network that was stopped from trying seat codes. */
	CODES

}
