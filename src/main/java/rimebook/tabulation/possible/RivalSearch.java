package rimebook.tabulation.possible;

/**
 * Looks for the fewest or the most of several marked rivals that end up strictly ahead of
 * a marked team, over all positions of the block. Judge by judge it fixes a position; on
 * the cards still open, team and rivals are each given what suits the aim best, which
 * bounds what can come of it, and where that is no better than what was found already it
 * turns back.
 */
final class RivalSearch {

	private final RankKeys keys;

	private final int team;

	private final int[] rivals;

	private final boolean fewest;

	private final boolean countsBlock;

	private final Reached reached;

	private Budget budget = new Budget(0);

	private int[][] choices = new int[0][];

	/** The block as the team sees it: as low as can be for the fewest, else high. */
	private int[] own = new int[0];

	/** The block as the rivals see it: the other way round. */
	private int[] theirs = new int[0];

	private int found;

	private boolean exhausted;

	RivalSearch(RankKeys keys, int team, int[] rivals, boolean fewest, boolean countsBlock, Reached reached) {
		this.keys = keys;
		this.team = team;
		this.rivals = rivals;
		this.fewest = fewest;
		this.countsBlock = countsBlock;
		this.reached = reached;
		this.found = fewest ? Integer.MAX_VALUE : -1;
	}

	/**
	 * Search among these positions for something better than what was found before.
	 * @param positions for every judge, best first
	 * @param steps how many may be taken
	 */
	void among(int[][] positions, Budget steps) {
		this.budget = steps;
		this.choices = positions;
		this.own = new int[positions.length];
		this.theirs = new int[positions.length];
		for (int judge = 0; judge < positions.length; judge++) {
			open(judge);
		}
		int bound = value();
		descend(0);
		if (this.exhausted && improves(bound)) {
			this.found = bound;
		}
	}

	private void open(int judge) {
		int[] positions = this.choices[judge];
		int last = positions.length - 1;
		this.own[judge] = positions[this.fewest ? last : 0];
		this.theirs[judge] = positions[this.fewest ? 0 : last];
	}

	private void descend(int judge) {
		if (!this.budget.step()) {
			this.exhausted = true;
			return;
		}
		int value = value();
		if (!improves(value)) {
			return;
		}
		if (judge == this.choices.length) {
			this.found = value;
			this.reached.noteInOrders(this.own);
			return;
		}
		int[] positions = this.choices[judge];
		for (int i = 0; i < positions.length; i++) {
			int position = positions[this.fewest ? positions.length - 1 - i : i];
			this.own[judge] = position;
			this.theirs[judge] = position;
			descend(judge + 1);
		}
		open(judge);
	}

	private boolean improves(int value) {
		return this.fewest ? value < this.found : value > this.found;
	}

	/** Twice the rivals ahead, and one more where the block is ahead too. */
	private int value() {
		long key = this.keys.marked(this.team, this.own);
		int ahead = 0;
		for (int rival : this.rivals) {
			ahead += (this.keys.marked(rival, this.theirs) < key) ? 2 : 0;
		}
		return ahead + ((this.countsBlock && this.keys.block(this.own) < key) ? 1 : 0);
	}

	/** Twice the rivals ahead, and one more where the block is ahead too. */
	int found() {
		return this.found;
	}

	/** How many rivals are ahead; a bound where the search ran out of its budget. */
	int rivalsAhead() {
		return this.found / 2;
	}

	/** Whether the block is ahead too in the best case found. */
	boolean isBlockAhead() {
		return this.found % 2 == 1;
	}

}
