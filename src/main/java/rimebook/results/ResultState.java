package rimebook.results;

/** How far a published version can be trusted to stay. */
public enum ResultState {

	/** May still change: teams are to skate, or the officials have not signed. */
	PROVISIONAL,

	/** Signed by referee and accountant. */
	OFFICIAL

}
