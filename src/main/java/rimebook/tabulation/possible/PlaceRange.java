package rimebook.tabulation.possible;

/**
 * The places a team can still reach.
 *
 * @param best from 1; nothing better can be reached
 * @param bestExact whether it can really be reached; otherwise it is a bound, and the
 * truth may be worse
 * @param worst nothing worse can happen
 * @param worstExact whether it can really happen; otherwise it is a bound, and the truth
 * may be better
 */
public record PlaceRange(int best, boolean bestExact, int worst, boolean worstExact) {

	/**
	 * Return whether both ends are exact.
	 * @return false where one of them is a bound
	 */
	public boolean isExact() {
		return this.bestExact && this.worstExact;
	}

	/**
	 * Return whether one place only is left.
	 * @return true where the place is certain
	 */
	public boolean isCertain() {
		return this.best == this.worst;
	}

	static PlaceRange of(int bestBound, int bestReached, int worstBound, int worstReached) {
		return new PlaceRange(bestBound, bestBound == bestReached, worstBound, worstBound == worstReached);
	}

}
