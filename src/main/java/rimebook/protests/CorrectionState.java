package rimebook.protests;

/** Where a correction stands. */
public enum CorrectionState {

	/** Proposed by one official; nothing has changed yet. */
	PROPOSED,

	/** Approved by another official; the card has a new version. */
	APPROVED,

	/** Turned down by another official. */
	REJECTED

}
