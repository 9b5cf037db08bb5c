package rimebook.tabulation;

/**
 * The order of teams without a place in every segment, all of them behind those who have
 * one. In the examples three segments have the factors 0.2, 0.3 and 0.5 and nobody shown
 * has a place in the third.
 */
public enum IncompleteOrder {

	/**
	 * By the place in the last segment reached: places {@code 26, 24} before
	 * {@code 20, 25} (default; it is how the published results of 1998 list those who did
	 * not reach the final segment).
	 */
	LAST_SEGMENT,

	/**
	 * By the factored places so far, then the last segment reached: {@code 20, 25} (11.5)
	 * before {@code 26, 24} (12.4).
	 */
	TOTAL_SO_FAR

}
