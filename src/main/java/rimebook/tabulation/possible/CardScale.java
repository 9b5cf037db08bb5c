package rimebook.tabulation.possible;

import java.util.TreeSet;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * All cards a judge may write, in order. Between two cards there may be none: nothing is
 * better than twice 6.0, and nothing lies between 5.6 + 5.8 and 5.5 + 5.9.
 */
final class CardScale {

	private static final int SHIFT = 1000;

	private final PlacementRules.CardTieBreak tieBreak;

	private final TreeSet<Integer> ranks;

	private CardScale(PlacementRules.CardTieBreak tieBreak, TreeSet<Integer> ranks) {
		this.tieBreak = tieBreak;
		this.ranks = ranks;
	}

	static CardScale of(PlacementRules rules) {
		int lowest = (rules.zeroMark() == PlacementRules.ZeroMark.REFUSE) ? CardMarks.STEP : 0;
		boolean single = rules.marksPerCard() == PlacementRules.MarksPerCard.ONE;
		int highestSecond = single ? 0 : CardMarks.HIGHEST;
		TreeSet<Integer> ranks = new TreeSet<>();
		for (int first = lowest; first <= CardMarks.HIGHEST; first += CardMarks.STEP) {
			for (int second = single ? 0 : lowest; second <= highestSecond; second += CardMarks.STEP) {
				ranks.add(rank(rules.cardTieBreak(), new CardMarks(first, second)));
			}
		}
		return new CardScale(rules.cardTieBreak(), ranks);
	}

	private static int rank(PlacementRules.CardTieBreak tieBreak, CardMarks card) {
		return card.total() * SHIFT + tieBreak.decidingMark(card);
	}

	/** How many cards are better than this one. */
	int above(CardMarks card) {
		return this.ranks.tailSet(rank(this.tieBreak, card), false).size();
	}

	int below(CardMarks card) {
		return this.ranks.headSet(rank(this.tieBreak, card), false).size();
	}

	/**
	 * How many lie between two.
	 * @throws TabulationException {@code other-rules}: under these rules the first is not
	 * the better one
	 */
	int between(CardMarks better, CardMarks worse) {
		if (rank(this.tieBreak, better) <= rank(this.tieBreak, worse)) {
			throw TabulationException.refused("other-rules", Sentence.of("tabulation.other-rules"));
		}
		return this.ranks.subSet(rank(this.tieBreak, worse), false, rank(this.tieBreak, better), false).size();
	}

}
