package rimebook.tabulation.points;

/** Whether the technical panel is done with a list of elements. */
public enum SheetState {

	/** Elements may be called, changed and deleted. */
	OPEN,

	/** Read back and authorised by the technical controller: nothing moves any more. */
	AUTHORISED

}
