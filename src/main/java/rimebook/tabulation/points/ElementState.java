package rimebook.tabulation.points;

/** How far the technical panel is with an element. */
public enum ElementState {

	/** Called as it happened. */
	CALLED,

	/** Somebody of the technical panel wants to see it again. */
	UNDER_REVIEW,

	/** Decided. */
	CONFIRMED,

	/** Taken back: its grades are void but not forgotten. */
	DELETED

}
