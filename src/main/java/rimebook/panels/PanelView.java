package rimebook.panels;

import java.util.List;

import rimebook.competition.EventId;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

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

	/** The places that must be filled and are not in one line; empty for none. */
	public Sentence missing() {
		return Series.withCommas(this.empty.stream().map(SeatPlace::spoken).toList());
	}

	/** Tell whether the referee and every judge have their seats. */
	public boolean isComplete() {
		return this.empty.isEmpty();
	}

}
