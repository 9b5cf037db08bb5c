package rimebook.tabulation;

/**
 * Who wins a one-by-one comparison in which both teams have the same number of judges in
 * favour. It can happen on an odd panel, because a judge with the two level counts for
 * both. No rule text on it was found; the sources say only that a majority of the judges
 * makes a win.
 */
public enum EqualJudgesInFavour {

	/** Both, since each has a majority: {@code 3 : 3} of five gives 1 and 1 (default). */
	BOTH_WIN(Hundredths.ONE),

	/** Half a win each: {@code 3 : 3} gives 0.5 and 0.5. */
	HALF_EACH(Hundredths.ONE / 2),

	/** Nobody: {@code 3 : 3} gives 0 and 0. */
	NEITHER(0);

	private final int credit;

	EqualJudgesInFavour(int credit) {
		this.credit = credit;
	}

	/**
	 * Return what an even comparison is worth to each of the two.
	 * @return hundredths of a win
	 */
	public int credit() {
		return this.credit;
	}

}
