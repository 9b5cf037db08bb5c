package rimebook.tabulation.possible;

import rimebook.tabulation.Hundredths;
import rimebook.tabulation.PlacementRules;

/**
 * One-by-one: wins, then judges in favour. What two marked teams have against each other
 * never changes; every team still to skate adds one comparison for each of them.
 */
final class OneByOneKeys implements RankKeys {

	private static final int FAVOUR_BITS = 24;

	private final JudgesCards cards;

	private final PlacementRules.EqualJudgesInFavour policy;

	private final int blockSize;

	private final int[] wins;

	private final int[] inFavour;

	OneByOneKeys(JudgesCards cards, PlacementRules.EqualJudgesInFavour policy, int blockSize) {
		this.cards = cards;
		this.policy = policy;
		this.blockSize = blockSize;
		this.wins = new int[cards.size()];
		this.inFavour = new int[cards.size()];
		for (int team = 0; team < cards.size(); team++) {
			for (int rival = 0; rival < cards.size(); rival++) {
				if (rival != team) {
					this.wins[team] += win(favouring(team, rival), favouring(rival, team));
					this.inFavour[team] += favouring(team, rival);
				}
			}
		}
	}

	private int favouring(int team, int rival) {
		int count = 0;
		for (int judge = 0; judge < this.cards.judges(); judge++) {
			count += (this.cards.position(judge, team) <= this.cards.position(judge, rival)) ? 1 : 0;
		}
		return count;
	}

	private int win(int own, int theirs) {
		if (own == theirs) {
			return this.policy.credit();
		}
		return (own > theirs) ? Hundredths.ONE : 0;
	}

	private static long key(int wins, int inFavour) {
		return -(((long) wins << FAVOUR_BITS) + inFavour);
	}

	@Override
	public long marked(int team, int[] block) {
		int own = 0;
		int theirs = 0;
		for (int judge = 0; judge < block.length; judge++) {
			int position = this.cards.position(judge, team);
			own += (position <= block[judge]) ? 1 : 0;
			theirs += (block[judge] <= position) ? 1 : 0;
		}
		return key(this.wins[team] + this.blockSize * win(own, theirs), this.inFavour[team] + this.blockSize * own);
	}

	@Override
	public long block(int[] block) {
		return againstMarked(block, (this.blockSize - 1) * this.policy.credit(), (this.blockSize - 1) * block.length);
	}

	@Override
	public long inBlock(int[] block, int before) {
		int behind = this.blockSize - 1 - before;
		return againstMarked(block, behind * Hundredths.ONE, behind * block.length);
	}

	private long againstMarked(int[] block, int winsInBlock, int inFavourInBlock) {
		int wins = winsInBlock;
		int inFavour = inFavourInBlock;
		for (int team = 0; team < this.cards.size(); team++) {
			int own = 0;
			int theirs = 0;
			for (int judge = 0; judge < block.length; judge++) {
				int position = this.cards.position(judge, team);
				own += (block[judge] <= position) ? 1 : 0;
				theirs += (position <= block[judge]) ? 1 : 0;
			}
			wins += win(own, theirs);
			inFavour += own;
		}
		return key(wins, inFavour);
	}

	@Override
	public boolean feelsLevelBlock() {
		return true;
	}

	/**
	 * A team still to skate can give the team a win and the rival none, and as many more
	 * judges in favour as rank the team before the rival; nothing where no judge does.
	 */
	@Override
	public boolean mayKeepUp(int team, int rival) {
		int before = 0;
		for (int judge = 0; judge < this.cards.judges(); judge++) {
			before += (this.cards.position(judge, team) < this.cards.position(judge, rival)) ? 1 : 0;
		}
		int moreWins = (before > 0) ? Hundredths.ONE * this.blockSize : 0;
		return key(this.wins[team] + moreWins, this.inFavour[team] + before * this.blockSize) <= key(this.wins[rival],
				this.inFavour[rival]);
	}

}
