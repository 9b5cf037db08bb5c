package rimebook.tabulation.possible;

/**
 * For every two marked teams, whether one can be strictly ahead of the other in the
 * segment. A yes may be wrong where it comes from a bound, a no never.
 */
final class PairOrder {

	private final boolean[][] mayBeAhead;

	private final boolean[][] isAlwaysAhead;

	private PairOrder(int marked) {
		this.mayBeAhead = new boolean[marked][marked];
		this.isAlwaysAhead = new boolean[marked][marked];
	}

	/** For one team still to skate: by search. */
	static PairOrder searched(Searches searches, int marked) {
		PairOrder order = new PairOrder(marked);
		for (int rival = 0; rival < marked; rival++) {
			for (int team = 0; team < marked; team++) {
				if (team != rival) {
					order.mayBeAhead[rival][team] = searches.most(team, rival) > 0;
					order.isAlwaysAhead[rival][team] = order.mayBeAhead[rival][team]
							&& searches.fewest(team, rival) > 0;
				}
			}
		}
		return order;
	}

	/** For any number of teams still to skate: by what is necessary. */
	static PairOrder bounded(RankKeys keys, int marked) {
		PairOrder order = new PairOrder(marked);
		for (int rival = 0; rival < marked; rival++) {
			for (int team = 0; team < marked; team++) {
				if (team != rival) {
					order.mayBeAhead[rival][team] = keys.mayKeepUp(rival, team);
					order.isAlwaysAhead[rival][team] = !keys.mayKeepUp(team, rival);
				}
			}
		}
		return order;
	}

	boolean mayBeAhead(int team, int rival) {
		return this.mayBeAhead[team][rival];
	}

	boolean isAlwaysAhead(int team, int rival) {
		return this.isAlwaysAhead[team][rival];
	}

	/** How many teams are ahead of it whatever happens. */
	int alwaysAheadOf(int team) {
		return count(this.isAlwaysAhead, team);
	}

	/** How many teams may be ahead of it. */
	int mayBeAheadOf(int team) {
		return count(this.mayBeAhead, team);
	}

	private static int count(boolean[][] ahead, int team) {
		int count = 0;
		for (boolean[] rival : ahead) {
			count += rival[team] ? 1 : 0;
		}
		return count;
	}

}
