package rimebook.panels;

import java.util.List;

import rimebook.competition.EventId;

/**
 * The panel of an event.
 *
 * @param seats those that were ever used, in the order of the panel; a place nobody
 * touched yet has no seat
 * @param missing the labels of the places that must be filled and are not
 */
public record PanelView(EventId event, List<SeatView> seats, List<String> missing) {

	public PanelView {
		seats = List.copyOf(seats);
		missing = List.copyOf(missing);
	}

	/** Tell whether the referee and every judge have their seats. */
	public boolean isComplete() {
		return this.missing.isEmpty();
	}

}
