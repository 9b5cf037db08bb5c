package rimebook.protests;

/**
 * What a protest is about, which decides whether and until when it is heard (ISU General
 * Regulations 2012, Rule 123 paragraphs 3 and 4). The limits themselves are settings.
 */
public enum ProtestCategory {

	/**
	 * The computation is wrong, or a mark was keyed in wrongly: heard until 24 hours
	 * after the result was posted.
	 */
	CALCULATION,

	/**
	 * Anything else that happened in the segment: heard until 30 minutes after the result
	 * was posted.
	 */
	CONDUCT,

	/** How judges, referee or technical panel evaluated a performance: never heard. */
	EVALUATION

}
