package rimebook.tabulation;

/** How many marks a judge gives each team. */
public enum MarksPerCard {

	/** Two, of which one decides equal totals (default). */
	TWO,

	/**
	 * One, as in some club events (slides "Introduction to 6.0 Scoring System",
	 * pdfslide.net): the total is that mark, the second is 0 and nothing decides equal
	 * totals.
	 */
	ONE

}
