package rimebook.marks;

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
 */
public record SegmentPanel(List<SeatView> counting, List<SeatView> judges, @Nullable SeatView substitute,
		String takenOver, List<Change> changes) {

	public SegmentPanel {
		counting = List.copyOf(counting);
		judges = List.copyOf(judges);
		changes = List.copyOf(changes);
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
	 */
	public record Change(SeatId seat, String label, String words, String by, Instant at, boolean canTakeBack) {
	}

}
