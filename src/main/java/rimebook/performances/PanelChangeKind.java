package rimebook.performances;

/** How the panel of a segment was changed while it was under way. */
enum PanelChangeKind {

	/** All cards of the substitute count in place of that judge's. */
	SUBSTITUTED,

	/** All cards of that judge are left out of the segment. */
	LEFT_OUT,

	/** What was said about that seat is taken back: its own cards count. */
	SEAT_BACK,

	/** One card of that seat never came: its marks of that performance are absent. */
	EXCUSED,

	/** The performance was opened again: the card is expected once more. */
	EXCUSE_OVER;

	boolean isAboutWholeSegment() {
		return this == SUBSTITUTED || this == LEFT_OUT || this == SEAT_BACK;
	}

}
