package rimebook.stand.web;

import java.util.List;
import java.util.stream.Stream;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.remarks.Remarks;
import rimebook.tabulation.SegmentKind;

/**
 * Remarks that are often needed; they fill the form and can still be changed. Some name
 * what the judges deduct, each a published amount: falls and elements of the short
 * programme (0.1 to 0.6) by ISU Communication 1122 (2001), time by US Figure Skating,
 * rules about programme timing (2006 and 2012), costume by US Figure Skating, general
 * deductions (2006), rule 3554. None is from memory. The rulebook in force decides.
 */
enum QuickRemark {

	ONE_FALL(Remarks.RemarkKind.FALL, Use.COMMON), MORE_FALLS(Remarks.RemarkKind.FALL, Use.COMMON),
	TOO_LONG(Remarks.RemarkKind.TIME, Use.COMMON), TOO_SHORT(Remarks.RemarkKind.TIME, Use.COMMON),
	LATE_START(Remarks.RemarkKind.TIME, Use.COMMON), PART_ON_ICE(Remarks.RemarkKind.COSTUME, Use.COMMON),
	NOT_PERMITTED(Remarks.RemarkKind.ELEMENT, Use.COMMON), TIME_DEDUCTED(Remarks.RemarkKind.TIME, Use.PLACEMENT),
	COSTUME_DEDUCTED(Remarks.RemarkKind.COSTUME, Use.PLACEMENT), MINOR_FALL(Remarks.RemarkKind.FALL, Use.SHORT),
	MEDIUM_FALL(Remarks.RemarkKind.FALL, Use.SHORT), MAJOR_FALL(Remarks.RemarkKind.FALL, Use.SHORT),
	OMITTED(Remarks.RemarkKind.ELEMENT, Use.SHORT), ADDED(Remarks.RemarkKind.ELEMENT, Use.SHORT),
	TOO_MANY(Remarks.RemarkKind.ELEMENT, Use.SHORT);

	private final Remarks.RemarkKind kind;

	private final Use use;

	QuickRemark(Remarks.RemarkKind kind, Use use) {
		this.kind = kind;
		this.use = use;
	}

	/** What kind of remark it is. */
	public Remarks.RemarkKind kind() {
		return this.kind;
	}

	/** Those that name no value. */
	static List<QuickRemark> common() {
		return Stream.of(values()).filter((remark) -> remark.use == Use.COMMON).toList();
	}

	/** Those that name what the judges of that segment deduct; none in points judging. */
	static List<QuickRemark> priced(EventView event, SegmentView segment) {
		if (event.isJudgedByPoints()) {
			return List.of();
		}
		return Stream.of(values())
			.filter((remark) -> remark.use == Use.PLACEMENT
					|| (remark.use == Use.SHORT && segment.kind() == SegmentKind.SHORT))
			.toList();
	}

	/** Where a remark is offered. */
	private enum Use {

		COMMON, PLACEMENT, SHORT

	}

}
