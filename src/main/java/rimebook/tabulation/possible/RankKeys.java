package rimebook.tabulation.possible;

import rimebook.tabulation.PlacementRules;

/**
 * The figures of a judging method as numbers that sort: a lower key is a better team,
 * equal keys share the place. The teams still to skate move as one block that takes one
 * position on every judge's card. The further up it goes on a card, the better is its
 * key, and no other team's key gets better.
 */
interface RankKeys {

	/**
	 * Return the key of a team that has been marked.
	 * @param team index
	 * @param block position of the block on every judge's card
	 */
	long marked(int team, int[] block);

	/** Return the key of each team of the block, all of them level. */
	long block(int[] block);

	/**
	 * Return the key of a team of the block where they are one behind the other, in the
	 * same order on every card.
	 * @param before how many of them are before it
	 */
	long inBlock(int[] block, int before);

	/**
	 * Tell whether a team may end up level with or ahead of another one, whatever the
	 * teams still to skate receive, each for itself. It may answer yes where the truth is
	 * no, never the other way round.
	 */
	boolean mayKeepUp(int team, int rival);

	/** Whether a team's figures tell the block level with it from the block below it. */
	boolean feelsLevelBlock();

	static RankKeys of(PlacementRules rules, JudgesCards cards, int blockSize) {
		return (rules.method() == PlacementRules.PlacementMethod.MAJORITY)
				? new MajorityKeys(cards, rules.sharedOrdinals(), blockSize)
				: new OneByOneKeys(cards, rules.equalJudgesInFavour(), blockSize);
	}

}
