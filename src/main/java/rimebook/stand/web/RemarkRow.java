package rimebook.stand.web;

import rimebook.pages.RinkClock;
import rimebook.performances.RemarkKind;
import rimebook.performances.RemarkView;
import rimebook.performances.RemarkReceipts;

/**
 * A remark to the panel with its time in the rink, and who has seen it.
 *
 * @param seen how many seats have said that they saw it
 * @param seats how many seats count
 * @param notYet the other seats in one line, empty when all have
 */
record RemarkRow(RemarkKind kind, String text, String notedBy, String time, int seen, int seats, String notYet) {

	static RemarkRow of(RemarkReceipts.ToPanel told, RinkClock clock) {
		RemarkView remark = told.remark();
		return new RemarkRow(remark.kind(), remark.text(), remark.notedBy(), clock.time(remark.notedAt()),
				told.seats() - told.notYet().size(), told.seats(), String.join(", ", told.notYet()));
	}

}
