package rimebook.performances;

import java.time.Instant;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatView;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;

/**
 * How a card that is new to the service comes in: from the judge's hand, or back from a
 * tablet after the service was started from a copy.
 *
 * @param actor the seat that sends it
 * @param returned what the tablet says of a card that comes back, {@code null} for one
 * that is new to everybody
 */
public record Reception(PerformanceView performance, Actor actor, @Nullable ReturnedCard returned) {

	/**
	 * Refuse a card for which it is too early or too late.
	 * @throws rimebook.shared.ConflictException {@code card-closed},
	 * {@code performance-not-open} or {@code card-of-another-day}
	 */
	public void requireOpen(ReturnedCard.EarlierLives lives) {
		if (this.returned == null) {
			PerformanceRegister.requireOnIce(this.performance);
		}
		else {
			lives.require(this.returned);
			PerformanceRegister.requireNotOver(this.performance);
		}
	}

	/** When it was first received. */
	public Instant at(Instant now) {
		return (this.returned != null) ? this.returned.receivedAt() : now;
	}

	/** Its line on the record. */
	public AuditedChange line(CardArrival<?> arrival, SeatView sender, Optional<String> before, String now) {
		return (this.returned != null) ? arrival.returnedLine(sender, before, now, this.actor, this.returned)
				: arrival.line(sender, before, now, this.actor);
	}

}
