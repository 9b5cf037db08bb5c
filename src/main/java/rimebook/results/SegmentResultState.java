package rimebook.results;

/** The road of a segment's result. */
public enum SegmentResultState {

	/** Teams are to skate, or the result was not posted yet. */
	RUNNING("not posted yet"),

	/** Posted with its time: the protest clock runs, signatures are collected. */
	POSTED("posted"),

	/** Signed by referee and accountant. */
	OFFICIAL("official");

	private final String words;

	SegmentResultState(String words) {
		this.words = words;
	}

	String words() {
		return this.words;
	}

}
