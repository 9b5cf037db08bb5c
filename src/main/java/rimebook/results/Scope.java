package rimebook.results;

/** What a standing is about. */
public enum Scope {

	/** One segment. */
	SEGMENT,

	/** The whole event: its segments combined by factored places, or by points. */
	EVENT

}
