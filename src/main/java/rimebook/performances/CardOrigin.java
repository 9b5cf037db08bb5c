package rimebook.performances;

/** Where a version of a card came from. */
public enum CardOrigin {

	/** Sent by the judge from the seat's device before the cards were closed. */
	JUDGE,

	/** Keyed in from a paper card before the cards were closed. */
	KEYED,

	/** Put in after closing by two officials with a reason. */
	CORRECTION

}
