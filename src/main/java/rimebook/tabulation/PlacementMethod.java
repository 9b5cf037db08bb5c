package rimebook.tabulation;

/** How the judges' ordinals become places. */
public enum PlacementMethod {

	/**
	 * The lowest place for which a majority of the judges stands: {@code 1 4 4 2 2} has
	 * three of five judges at 2nd or better.
	 */
	MAJORITY,

	/**
	 * Every team against every other: a win goes to the team that more judges preferred,
	 * places go by wins.
	 */
	ONE_BY_ONE

}
