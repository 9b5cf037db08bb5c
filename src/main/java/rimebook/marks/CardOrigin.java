package rimebook.marks;

/** Where a version of a card came from. */
enum CardOrigin {

	/** Sent by the judge from the seat's device before the cards were closed. */
	JUDGE,

	/** Put in after closing by two officials with a reason. */
	CORRECTION

}
