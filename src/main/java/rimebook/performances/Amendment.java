package rimebook.performances;

/**
 * What stands in one place of a card, of a list, or of how a team came through, when two
 * officials correct it: both what was there and what shall be are one of these. Each way
 * of judging has its own; what they share is that they can be said in words and kept as
 * JSON (by the components of the record), which is read back for as long as the
 * competition is kept.
 */
public interface Amendment {

	/** The place in words: "element 3", "Composition"; empty for a card as a whole. */
	String place();

	/** What stands there, in words. */
	String words();

	/**
	 * The list that the place is on, in words; empty for a card, or where there is none.
	 */
	default String list() {
		return "";
	}

	/**
	 * Tell whether the technical panel has to agree, whose members are then named in the
	 * reason.
	 */
	default boolean isOfTechnicalPanel() {
		return false;
	}

	/** How long the reason may be, in characters. */
	default int longestReason() {
		return 2000;
	}

}
