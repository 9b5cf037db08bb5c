package rimebook.marks.web;

import rimebook.marks.RemarkKind;

/** Remarks that are often needed; they fill the form and can still be changed. */
enum QuickRemark {

	ONE_FALL(RemarkKind.FALL), MORE_FALLS(RemarkKind.FALL), TOO_LONG(RemarkKind.TIME), TOO_SHORT(RemarkKind.TIME),
	LATE_START(RemarkKind.TIME), PART_ON_ICE(RemarkKind.COSTUME), NOT_PERMITTED(RemarkKind.ELEMENT);

	private final RemarkKind kind;

	QuickRemark(RemarkKind kind) {
		this.kind = kind;
	}

	/** What kind of remark it is. */
	public RemarkKind kind() {
		return this.kind;
	}

}
