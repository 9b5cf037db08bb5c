package rimebook.remarks;

/**
 * What the referee tells the panel about a performance. Nothing is subtracted by the
 * service: in placement judging each judge's mark already holds the deduction (common
 * practice; the referee informs the panel).
 */
public enum RemarkKind {

	/** A fall, with how many skaters. */
	FALL,
	/** Programme too long or too short, late start. */
	TIME,
	/** Costume or prop. */
	COSTUME,
	/** A movement that is not permitted. */
	ELEMENT,
	/** The programme was broken off, goes on or is skated again. */
	ICE,
	/** Anything else the panel must know. */
	OTHER

}
