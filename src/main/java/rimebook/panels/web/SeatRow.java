package rimebook.panels.web;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatKind;
import rimebook.panels.SeatPlace;
import rimebook.panels.SeatView;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * One place of the panel as people read it.
 *
 * @param seat who sits there, {@code null} for a place nobody touched yet
 * @param grounds what binds whoever sits there to a team of the event and was not set
 * aside
 * @param heard how long ago the tablet spoke, {@code null} if it has not
 * @param choice who was chosen for it and does not sit there yet
 */
record SeatRow(Place place, @Nullable SeatView seat, Sentence grounds, @Nullable Heard heard, SeatChoice choice) {

	static SeatRow of(SeatPlace place, Optional<SeatView> seat, List<Sentence> grounds, Instant now,
			SeatChoice choice) {
		boolean taken = seat.map(SeatView::official).isPresent();
		return new SeatRow(new Place(PanelForm.value(place), place.spoken(),
				place.kind() == SeatKind.JUDGE || (place.kind().hasCard() && taken), place.isRequired() && !taken),
				seat.orElse(null), Series.withSemicolons(grounds),
				seat.map((taker) -> taker.tablet().lastHeardAt()).map((then) -> Heard.of(then, now)).orElse(null),
				choice);
	}

	/** Tell whether somebody sits there. */
	public boolean taken() {
		return this.seat != null && this.seat.official() != null;
	}

	/** Tell whether somebody has to look at who sits there. */
	public boolean bound() {
		return taken() && !this.grounds.isEmpty();
	}

	/**
	 * The code in two groups of four, empty until one is issued and once it is hidden.
	 */
	public String code() {
		String code = (this.seat != null) ? this.seat.code() : null;
		return (code != null) ? inFours(code) : "";
	}

	/** Tell whether there is a code that is shown no longer. */
	public boolean hidden() {
		return this.seat != null && this.seat.hasCode() && this.seat.code() == null;
	}

	static String inFours(String code) {
		return code.substring(0, 4) + " " + code.substring(4);
	}

	/**
	 * Which place of the panel it is.
	 *
	 * @param value the place as a form sends it
	 * @param missing whether it must be filled and is not
	 */
	record Place(String value, Sentence spoken, boolean judge, boolean missing) {
	}

}
