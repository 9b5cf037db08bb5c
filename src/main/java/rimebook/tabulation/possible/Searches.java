package rimebook.tabulation.possible;

/** The searches over positions of the block, each with a budget of its own. */
final class Searches {

	private static final int MOST_STEPS = 3000;

	private static final int FEWEST_STEPS = 60;

	/** Up to so many teams every search has the most steps. */
	private static final int USUAL_TEAMS = 24;

	private final Teams teams;

	private final RankKeys keys;

	private final Reached reached;

	private final int steps;

	Searches(Teams teams, RankKeys keys, Reached reached) {
		this.teams = teams;
		this.keys = keys;
		this.reached = reached;
		this.steps = steps(Math.max(USUAL_TEAMS, teams.marked()));
	}

	/** The work for all teams grows with the square of their number, so steps shrink. */
	private static int steps(int teams) {
		return Math.max(FEWEST_STEPS, MOST_STEPS * USUAL_TEAMS * USUAL_TEAMS / (teams * teams));
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
		search.among(Choices.enough(this.teams.cards(), this.keys, team, rivals, fewest), new Budget(this.steps));
		return search.rivalsAhead();
	}

	/** Search the fewest or the most marked teams ahead of a marked team. */
	Ahead all(int team, boolean fewest) {
		int[] rivals = this.teams.othersMarked(team);
		RivalSearch search = new RivalSearch(this.keys, team, rivals, fewest, true, this.reached);
		search.among(Choices.enough(this.teams.cards(), this.keys, team, rivals, fewest), new Budget(this.steps));
		int marked = search.rivalsAhead();
		if (search.isBlockAhead() == fewest) {
			search.among(Choices.all(this.teams.cards()), new Budget(this.steps));
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
