package rimebook.tabulation.possible;

/** The searches over positions of the block, each with a budget of its own. */
final class Searches {

	private static final int STEPS = 3000;

	private final Teams teams;

	private final RankKeys keys;

	private final Reached reached;

	Searches(Teams teams, RankKeys keys, Reached reached) {
		this.teams = teams;
		this.keys = keys;
		this.reached = reached;
	}

	/** Return 1 where the rival ends up ahead of the team at any rate, else 0. */
	int fewest(int team, int rival) {
		return pair(team, rival, true);
	}

	/** Return 1 where the rival can end up ahead of the team, else 0. */
	int most(int team, int rival) {
		return pair(team, rival, false);
	}

	private int pair(int team, int rival, boolean fewest) {
		int[] rivals = { rival };
		RivalSearch search = new RivalSearch(this.keys, team, rivals, fewest, false, this.reached);
		search.among(Choices.enough(this.teams.cards(), this.keys, team, rivals, fewest), new Budget(STEPS));
		return search.rivalsAhead();
	}

	/** Search the fewest or the most marked teams ahead of a marked team. */
	Ahead all(int team, boolean fewest) {
		int[] rivals = this.teams.othersMarked(team);
		RivalSearch search = new RivalSearch(this.keys, team, rivals, fewest, true, this.reached);
		search.among(Choices.enough(this.teams.cards(), this.keys, team, rivals, fewest), new Budget(STEPS));
		int marked = search.rivalsAhead();
		if (search.isBlockAhead() == fewest) {
			search.among(Choices.all(this.teams.cards()), new Budget(STEPS));
		}
		return new Ahead(marked, search.found() > 2 * marked);
	}

	/**
	 * How many end up ahead of a team.
	 *
	 * @param marked teams that have been marked
	 * @param block whether those still to skate are ahead beside as many marked ones
	 */
	record Ahead(int marked, boolean block) {

		int total() {
			return this.marked + (this.block ? 1 : 0);
		}

	}

}
