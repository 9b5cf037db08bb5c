package rimebook.performances;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.MappedSuperclass;

import rimebook.panels.SeatId;
import rimebook.shared.NotFoundException;

/**
 * One version of one judge's card, whatever stands on it: written once, never changed.
 */
@MappedSuperclass
public abstract class JudgesCard extends PerformanceLine {

	@Column(name = "seat_id")
	private UUID seat;

	private int sequence;

	@Enumerated(EnumType.STRING)
	private CardOrigin origin;

	private Instant receivedAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected JudgesCard() {
	}

	protected JudgesCard(UUID id, PerformanceId performance, SeatId seat, int sequence, Receipt receipt) {
		super(id, performance);
		this.seat = seat.value();
		this.sequence = sequence;
		this.origin = receipt.origin();
		this.receivedAt = receipt.at();
	}

	/** Tell whether it is of that seat and performance. */
	public boolean isOf(PerformanceId performance, SeatId seat) {
		return performance().equals(performance.value()) && this.seat.equals(seat.value());
	}

	/** Whose card it is. */
	public SeatId seat() {
		return new SeatId(this.seat);
	}

	/** Its version, from 1. */
	public int sequence() {
		return this.sequence;
	}

	/** Where it came from. */
	public CardOrigin origin() {
		return this.origin;
	}

	/** When it was received, UTC. */
	public Instant receivedAt() {
		return this.receivedAt;
	}

	/** The word that it is kept. */
	public CardBook.Acknowledgement acknowledged() {
		return new CardBook.Acknowledgement(getId(), this.sequence, this.receivedAt);
	}

	/**
	 * The version that a card took the place of.
	 * @param versions of the same seat, for this performance and perhaps for others
	 * @throws NotFoundException if it is the first
	 */
	public static <C extends JudgesCard> C before(C card, List<C> versions) {
		return versions.stream()
			.filter((older) -> older.isOf(new PerformanceId(card.performance()), card.seat())
					&& older.sequence() == card.sequence() - 1)
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("card", card.getId()));
	}

	/**
	 * How a card came.
	 *
	 * @param origin where from
	 * @param at when, UTC
	 */
	public record Receipt(CardOrigin origin, Instant at) {
	}

}
