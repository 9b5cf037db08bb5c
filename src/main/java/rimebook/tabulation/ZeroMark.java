package rimebook.tabulation;

/** What a mark of 0.0 means. */
public enum ZeroMark {

	/** The lowest mark: {@code 0.0 + 2.0} totals 2.0 (default). */
	COUNT,

	/**
	 * Not skated, so a card with it is refused: {@code 0.0 + 2.0} gives
	 * {@code zero-mark}.
	 */
	REFUSE

}
