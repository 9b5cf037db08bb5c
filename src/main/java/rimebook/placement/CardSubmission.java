package rimebook.placement;

import java.util.UUID;

import jakarta.persistence.Entity;
import org.hibernate.annotations.Immutable;

import rimebook.panels.SeatId;
import rimebook.paper.PaperCards;
import rimebook.performances.CardOrigin;
import rimebook.performances.JudgesCard;
import rimebook.performances.PerformanceId;
import rimebook.tabulation.CardMarks;

/** One version of one judge's card: written once, never changed. */
@Entity
@Immutable
class CardSubmission extends JudgesCard {

	private int firstMark;

	private int secondMark;

	// Hibernate fills the fields.
	protected CardSubmission() {
	}

	CardSubmission(UUID id, PerformanceId performance, SeatId seat, int sequence, CardMarks marks, Receipt receipt) {
		super(id, performance, seat, sequence, receipt);
		this.firstMark = marks.first();
		this.secondMark = marks.second();
	}

	/** Tell whether this row is just what the seat sends again. */
	boolean isSameAs(MarkSubmission.SubmitCard card, SeatId seat) {
		return isOf(card.performance(), seat) && sequence() == card.sequence() && marks().equals(card.marks());
	}

	CardMarks marks() {
		return new CardMarks(this.firstMark, this.secondMark);
	}

	PaperCards.HeldCard held() {
		return new PaperCards.HeldCard(MarkLine.card(marks()), sequence(), origin(), receivedAt(), true);
	}

	OwnCards.Card view() {
		return new OwnCards.Card(seat(), marks(), sequence(), receivedAt(), origin() == CardOrigin.CORRECTION);
	}

}
