package rimebook.tabulation.points;

/** What became of one judge's mark in one line of the sheet. */
public enum MarkUse {

	/** Part of the mean. */
	COUNTED,

	/** Left out: one highest mark of the line. */
	DROPPED_HIGHEST,

	/** Left out: one lowest mark of the line. */
	DROPPED_LOWEST,

	/** The judge gave none. */
	ABSENT

}
