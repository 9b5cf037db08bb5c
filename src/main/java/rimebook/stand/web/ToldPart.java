package rimebook.stand.web;

import java.util.List;

import rimebook.pages.RinkClock;
import rimebook.stand.StandView;

/** What the panel was told about the performance on the ice, and who has seen it. */
record ToldPart(List<RemarkRow> remarks) implements LivePart {

	static ToldPart of(StandView stand, RinkClock clock) {
		StandView.Now onIce = stand.now();
		return new ToldPart((onIce == null) ? List.of()
				: onIce.remarks().stream().map((told) -> RemarkRow.of(told, clock)).toList());
	}

}
