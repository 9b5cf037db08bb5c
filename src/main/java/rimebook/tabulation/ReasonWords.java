package rimebook.tabulation;

/** The words of one judging method or of the combination. */
interface ReasonWords {

	/** The team's own figures, as far as the reason needs them. */
	String own(Reason reason);

	/** What the rivals had instead; follows their names and a comma. */
	String rivals(Comparison comparison);

}
