package rimebook.stand.web;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.stand.StandView;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * What waits for the referee now.
 *
 * @param now the performance on the ice, or {@code null}
 * @param next the one to call next, or {@code null}
 * @param byPoints whether elements and components are judged
 * @param underWay whether the clock was started and not stopped
 * @param finished whether every performance of the segment is done
 */
record DecisionPart(StandView.@Nullable Row now, StandView.@Nullable Row next, Cards cards, boolean byPoints,
		boolean underWay, boolean finished) implements LivePart {

	static DecisionPart of(StandView stand) {
		StandView.Now onIce = stand.now();
		if (onIce == null) {
			return new DecisionPart(null, stand.next(), new Cards(0, List.of(), List.of(), false), false, false,
					stand.isFinished());
		}
		return new DecisionPart(onIce.row(), stand.next(),
				new Cards((int) onIce.cards().seats().stream().filter(StandView.SeatCard::counts).count(),
						onIce.cards().missing(), onIce.cards().spare(), onIce.cards().anySent()),
				stand.event().isJudgedByPoints(), onIce.clock().state().isUnderWay(), false);
	}

	/** What is missing in one line. */
	public Sentence missingInWords() {
		return Series.withCommas(this.cards.missing());
	}

	/** What is missing of the substitute's card in one line; empty for nothing. */
	public Sentence spareInWords() {
		return Series.withCommas(this.cards.spare());
	}

	/** Tell whether the cards can be closed. */
	public boolean canClose() {
		return this.now != null && this.cards.missing().isEmpty() && !this.underWay;
	}

	/** Tell whether the call can still be taken back: nothing was sent. */
	public boolean canTakeBack() {
		return this.now != null && !this.cards.anySent() && !this.now.performance().isAgain();
	}

	/**
	 * What there is of the cards that count, and what is missing.
	 *
	 * @param seats how many seats count
	 * @param missing what is missing before the cards can be closed
	 * @param spare what is missing of the substitute's card, which closing does not wait
	 * for
	 * @param anySent whether anything was sent for the performance
	 */
	record Cards(int seats, List<Sentence> missing, List<Sentence> spare, boolean anySent) {
	}

}
