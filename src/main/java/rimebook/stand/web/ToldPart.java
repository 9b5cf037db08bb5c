package rimebook.stand.web;

import java.util.List;

import rimebook.pages.RinkClock;
import rimebook.remarks.RemarkReceipts;
import rimebook.remarks.Remarks;
import rimebook.stand.StandView;

/** What the panel was told about the performance on the ice, and who has seen it. */
record ToldPart(List<RemarkRow> remarks) implements LivePart {

	static ToldPart of(StandView stand, RinkClock clock) {
		StandView.Now onIce = stand.now();
		return new ToldPart((onIce == null) ? List.of()
				: onIce.remarks().stream().map((told) -> RemarkRow.of(told, clock)).toList());
	}

	/** A remark to the panel with its time in the rink, and who has seen it. */
	record RemarkRow(Remarks.RemarkKind kind, String text, String notedBy, String time, Receipts receipts) {

		static RemarkRow of(RemarkReceipts.ToPanel told, RinkClock clock) {
			Remarks.RemarkView remark = told.remark();
			return new RemarkRow(remark.kind(), remark.text(), remark.notedBy(), clock.time(remark.notedAt()),
					new Receipts(told.seats() - told.notYet().size(), told.seats(), String.join(", ", told.notYet())));
		}

		/**
		 * Who has seen a remark.
		 *
		 * @param seen how many seats have said that they saw it
		 * @param seats how many seats count
		 * @param notYet the other seats in one line, empty when all have
		 */
		record Receipts(int seen, int seats, String notYet) {
		}

	}

}
