package rimebook.panels;

import java.util.List;

import rimebook.competition.EventId;

/**
 * The panel of an event.
 *
 * @param seats those that were ever used, in the order of the panel; a place nobody
 * touched yet has no seat
 * @param empty the places that must be filled and are not
 */
public record PanelView(EventId event, List<SeatView> seats, List<SeatPlace> empty) {

	public PanelView {
		seats = List.copyOf(seats);
		empty = List.copyOf(empty);
	}

	/** The labels of the places that must be filled and are not, in English. */
	public List<String> missing() {
		return this.empty.stream().map(SeatPlace::label).toList();
	}

	/** Tell whether the referee and every judge have their seats. */
	public boolean isComplete() {
		return this.empty.isEmpty();
	}

}
