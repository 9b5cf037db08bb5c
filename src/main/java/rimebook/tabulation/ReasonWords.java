package rimebook.tabulation;

/** The words of one judging method or of the combination. */
public interface ReasonWords {

	/**
	 * Name the team's own figures.
	 * @param reason tells which of them are needed
	 * @return part of a sentence
	 */
	String own(Reason reason);

	/**
	 * Say what the rivals had instead.
	 * @param comparison with the next better or next worse place
	 * @return part of a sentence, which follows their names and a comma
	 */
	String rivals(Comparison comparison);

}
