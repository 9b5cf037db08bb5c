package rimebook.placement;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.hibernate.annotations.Immutable;

import rimebook.panels.SeatId;
import rimebook.paper.PaperCards;
import rimebook.performances.CardBook;
import rimebook.performances.CardOrigin;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceLine;
import rimebook.tabulation.CardMarks;

/** One version of one judge's card: written once, never changed. */
@Entity
@Immutable
class CardSubmission extends PerformanceLine {

	@Column(name = "seat_id")
	private UUID seat;

	private int sequence;

	private int firstMark;

	private int secondMark;

	@Enumerated(EnumType.STRING)
	private CardOrigin origin;

	private Instant receivedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected CardSubmission() {
	}

	CardSubmission(UUID id, PerformanceId performance, SeatId seat, int sequence, CardMarks marks, CardOrigin origin,
			Instant receivedAt) {
		super(id, performance);
		this.seat = seat.value();
		this.sequence = sequence;
		this.firstMark = marks.first();
		this.secondMark = marks.second();
		this.origin = origin;
		this.receivedAt = receivedAt;
	}

	/** Tell whether this row is just what the seat sends again. */
	boolean isSameAs(MarkSubmission.SubmitCard card, SeatId seat) {
		return isOf(card.performance(), seat) && this.sequence == card.sequence() && marks().equals(card.marks());
	}

	boolean isOf(PerformanceId performance, SeatId seat) {
		return performance().equals(performance.value()) && this.seat.equals(seat.value());
	}

	SeatId seat() {
		return new SeatId(this.seat);
	}

	int sequence() {
		return this.sequence;
	}

	CardMarks marks() {
		return new CardMarks(this.firstMark, this.secondMark);
	}

	CardBook.Acknowledgement acknowledged() {
		return new CardBook.Acknowledgement(getId(), this.sequence, this.receivedAt);
	}

	PaperCards.HeldCard held() {
		return new PaperCards.HeldCard(MarkLine.card(marks()), this.sequence, this.origin, this.receivedAt, true);
	}

	OwnCards.Card view() {
		return new OwnCards.Card(seat(), marks(), this.sequence, this.receivedAt, this.origin == CardOrigin.CORRECTION);
	}

}
