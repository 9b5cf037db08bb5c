package rimebook.performances;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatId;

/**
 * Something else that would stand in one place of a closed performance: what a correction
 * would bring is looked at before it is decided.
 *
 * @param seat whose card, {@code null} where it is no judge's
 * @param amendment what would stand there, and where
 */
public record SupposedChange<A extends Amendment>(PerformanceId performance, @Nullable SeatId seat, A amendment) {

	/** The seat of a place that is on a judge's card. */
	public SeatId judge() {
		if (this.seat == null) {
			throw new IllegalStateException("No seat is named for a card.");
		}
		return this.seat;
	}

}
