package rimebook.tabulation;

/** Whether a panel with an even number of judges may be tabulated. */
public enum EvenPanel {

	/** Four judges: refused with {@code even-panel} (default). */
	REFUSE,

	/** Four judges: a majority is three, that is half the panel and one more. */
	ALLOW

}
