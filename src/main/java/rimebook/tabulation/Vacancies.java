package rimebook.tabulation;

/**
 * Whether somebody moves up where a team that has advanced withdraws before the next
 * segment. In the examples two of {@code A 1, B 2, C 3} advance and B withdraws.
 */
public enum Vacancies {

	/** Nobody does: {@code A} (default; so the organisers of the 2014 Worlds decided). */
	LEAVE,

	/**
	 * The next team of the same round does: {@code A, C} (1997 Worlds, men: the winner of
	 * the short programme withdrew and the free skating still had 24 starters).
	 */
	FILL

}
