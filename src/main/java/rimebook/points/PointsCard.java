package rimebook.points;

import java.util.UUID;

import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import org.hibernate.annotations.Immutable;

import rimebook.panels.SeatId;
import rimebook.paper.PaperCards;
import rimebook.performances.JudgesCard;
import rimebook.performances.PerformanceId;

/** One version of one judge's card in points judging: written once, never changed. */
@Entity
@Immutable
class PointsCard extends JudgesCard {

	private int listSequence;

	@Convert(converter = PointsJson.Marks.class)
	private PointsMarks marks;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected PointsCard() {
	}

	PointsCard(UUID id, PerformanceId performance, SeatId seat, int sequence, Given given, Receipt receipt) {
		super(id, performance, seat, sequence, receipt);
		this.listSequence = given.listSequence();
		this.marks = given.marks();
	}

	/** Tell whether this row is just what the seat sends again. */
	boolean isSameAs(PointsSubmission.SubmitPointsCard card, SeatId seat) {
		return isOf(card.performance(), seat) && sequence() == card.sequence() && this.marks.equals(card.marks())
				&& card.isGivenTo(this.listSequence);
	}

	/** The version of the list that the grades were given to, 0 where nobody knows. */
	int listSequence() {
		return this.listSequence;
	}

	PointsTasks.PointsTask.OwnCard own() {
		return new PointsTasks.PointsTask.OwnCard(sequence(), this.marks, receivedAt());
	}

	PointsMarks marks() {
		return this.marks;
	}

	PaperCards.HeldCard held(CalledLists lists) {
		return new PaperCards.HeldCard(GradedLine.card(this.marks), sequence(), origin(), receivedAt(),
				lists.isConfirmed(this));
	}

	PointsSubmission.PointsCardView view() {
		return new PointsSubmission.PointsCardView(seat(), this.marks, sequence(), receivedAt(), origin());
	}

	/**
	 * What was given to which elements.
	 *
	 * @param listSequence the version of the list of called elements, 0 where nobody
	 * knows
	 */
	record Given(int listSequence, PointsMarks marks) {
	}

}
