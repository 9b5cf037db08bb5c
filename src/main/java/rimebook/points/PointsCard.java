package rimebook.points;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
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

/** One version of one judge's card in points judging: written once, never changed. */
@Entity
@Immutable
class PointsCard extends PerformanceLine {

	@Column(name = "seat_id")
	private UUID seat;

	private int sequence;

	private int listSequence;

	@Convert(converter = PointsJson.Marks.class)
	private PointsMarks marks;

	@Enumerated(EnumType.STRING)
	private CardOrigin origin;

	private Instant receivedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PointsCard() {
	}

	PointsCard(UUID id, PerformanceId performance, SeatId seat, int sequence, int listSequence, PointsMarks marks,
			CardOrigin origin, Instant receivedAt) {
		super(id, performance);
		this.seat = seat.value();
		this.sequence = sequence;
		this.listSequence = listSequence;
		this.marks = marks;
		this.origin = origin;
		this.receivedAt = receivedAt;
	}

	/** Tell whether this row is just what the seat sends again. */
	boolean isSameAs(PointsSubmission.SubmitPointsCard card, SeatId seat) {
		return isOf(card.performance(), seat) && this.sequence == card.sequence() && this.marks.equals(card.marks())
				&& card.isGivenTo(this.listSequence);
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

	/** The version of the list that the grades were given to, 0 where nobody knows. */
	int listSequence() {
		return this.listSequence;
	}

	PointsTasks.PointsTask.OwnCard own() {
		return new PointsTasks.PointsTask.OwnCard(this.sequence, this.marks, this.receivedAt);
	}

	PointsMarks marks() {
		return this.marks;
	}

	CardBook.Acknowledgement acknowledged() {
		return new CardBook.Acknowledgement(getId(), this.sequence, this.receivedAt);
	}

	PaperCards.HeldCard held(CalledLists lists) {
		return new PaperCards.HeldCard(GradedLine.card(this.marks), this.sequence, this.origin, this.receivedAt,
				lists.isConfirmed(this));
	}

	PointsSubmission.PointsCardView view() {
		return new PointsSubmission.PointsCardView(seat(), this.marks, this.sequence, this.receivedAt, this.origin);
	}

}
