package rimebook.tabulation.possible;

import java.util.TreeSet;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.CardTieBreak;
import rimebook.tabulation.MarksPerCard;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.ZeroMark;

/**
 * All cards a judge may write, in order. Between two cards there may be none: nothing is
 * better than twice 6.0, and nothing lies between 5.6 + 5.8 and 5.5 + 5.9.
 */
final class CardScale {

	private static final int SHIFT = 1000;

	private final CardTieBreak tieBreak;

	private final TreeSet<Integer> ranks;

	private CardScale(CardTieBreak tieBreak, TreeSet<Integer> ranks) {
		this.tieBreak = tieBreak;
		this.ranks = ranks;
	}

	static CardScale of(PlacementRules rules) {
		int lowest = (rules.zeroMark() == ZeroMark.REFUSE) ? CardMarks.STEP : 0;
		boolean single = rules.marksPerCard() == MarksPerCard.ONE;
		int highestSecond = single ? 0 : CardMarks.HIGHEST;
		TreeSet<Integer> ranks = new TreeSet<>();
		for (int first = lowest; first <= CardMarks.HIGHEST; first += CardMarks.STEP) {
			for (int second = single ? 0 : lowest; second <= highestSecond; second += CardMarks.STEP) {
				ranks.add(rank(rules.cardTieBreak(), new CardMarks(first, second)));
			}
		}
		return new CardScale(rules.cardTieBreak(), ranks);
	}

	private static int rank(CardTieBreak tieBreak, CardMarks card) {
		return card.total() * SHIFT + tieBreak.decidingMark(card);
	}

	/** Whether a card is better than this one. */
	boolean hasAbove(CardMarks card) {
		return rank(this.tieBreak, card) < this.ranks.last();
	}

	boolean hasBelow(CardMarks card) {
		return rank(this.tieBreak, card) > this.ranks.first();
	}

	boolean hasBetween(CardMarks better, CardMarks worse) {
		Integer next = this.ranks.higher(rank(this.tieBreak, worse));
		return next != null && next < rank(this.tieBreak, better);
	}

}
