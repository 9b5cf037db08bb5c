package rimebook.tabulation;

/**
 * What becomes of teams that share the last advancing place of a round. In the examples
 * two advance and the places are {@code A 1, B 2, C 2, D 4}.
 */
public enum LastPlaceTies {

	/**
	 * All of them advance: {@code A, B, C} (default; Grand Prix and Olympic team rules,
	 * as reported by ifsmagazines.com in 2018).
	 */
	ALL_ADVANCE,

	/** None of them advances: {@code A}. */
	NONE_ADVANCES

}
