package rimebook.performances;

import java.time.Instant;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatId;
import rimebook.panels.SeatView;

/**
 * The panel of a segment as the referee decides about it.
 *
 * @param counting the seats whose cards count, in the order of the judges' numbers
 * @param judges the judges' seats whose own cards count
 * @param substitute the substitute's seat, {@code null} where nobody sits there
 * @param takenOver the label of the seat that the substitute has taken over, empty for
 * none
 * @param changes what differs from the panel as drawn, oldest first
 * @param lacking the closed cards that the substitute, or a judge who was left out, has
 * not given; each can be keyed in from paper
 */
public record SegmentPanel(List<SeatView> counting, List<SeatView> judges, @Nullable SeatView substitute,
		String takenOver, List<Change> changes, List<Lacking> lacking) {

	public SegmentPanel {
		counting = List.copyOf(counting);
		judges = List.copyOf(judges);
		changes = List.copyOf(changes);
		lacking = List.copyOf(lacking);
	}

	/** Tell whether a substitute could take over a seat. */
	public boolean canTakeOver() {
		return this.substitute != null && this.takenOver.isEmpty();
	}

	/**
	 * A difference from the panel as drawn.
	 *
	 * @param words in one sentence, with the reason
	 * @param canTakeBack whether no card was closed since
	 * @param byRule whether it can be taken back later, too, by a rule that is named
	 */
	public record Change(SeatId seat, String label, String words, String by, Instant at, boolean canTakeBack,
			boolean byRule) {
	}

	/**
	 * A card that a seat has not given although it was closed.
	 *
	 * @param team number and name
	 */
	public record Lacking(SeatView seat, PerformanceId performance, String team) {
	}

}
