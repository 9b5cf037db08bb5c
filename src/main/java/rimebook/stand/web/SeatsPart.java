package rimebook.stand.web;

import java.time.Instant;
import java.util.List;

import rimebook.pages.RinkClock;
import rimebook.stand.StandView;

/** The panel's seats for the performance on the ice. */
record SeatsPart(List<SeatRow> seats) implements LivePart {

	static SeatsPart of(StandView stand, RinkClock clock, Instant now) {
		StandView.Now onIce = stand.now();
		if (onIce == null) {
			return new SeatsPart(List.of());
		}
		return new SeatsPart(onIce.seats().stream().map((seat) -> SeatRow.of(seat, clock, now)).toList());
	}

}
