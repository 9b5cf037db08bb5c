package rimebook.marks.web;

import rimebook.marks.RemarkKind;
import rimebook.marks.RemarkView;

/** A remark to the panel with its time in the rink. */
record RemarkRow(RemarkKind kind, String text, String notedBy, String time) {

	static RemarkRow of(RemarkView remark, RinkClock clock) {
		return new RemarkRow(remark.kind(), remark.text(), remark.notedBy(), clock.time(remark.notedAt()));
	}

}
