package rimebook.entries;

/** Whether the team of an entry still means to skate. */
public enum EntryState {

	/** The team takes part. */
	ENTERED,

	/** The team does not, or no longer; its entry stays on the list. */
	WITHDRAWN

}
