package rimebook.marks.web;

import java.time.Instant;
import java.util.List;

import rimebook.marks.StandView;

/** The panel's seats for the performance on the ice, and what the panel was told. */
record SeatsPart(List<SeatRow> seats, List<RemarkRow> remarks) implements LivePart {

	static SeatsPart of(StandView stand, RinkClock clock, Instant now) {
		StandView.Now onIce = stand.now();
		if (onIce == null) {
			return new SeatsPart(List.of(), List.of());
		}
		return new SeatsPart(onIce.seats().stream().map((seat) -> SeatRow.of(seat, clock, now)).toList(),
				onIce.remarks().stream().map((remark) -> RemarkRow.of(remark, clock)).toList());
	}

}
