package rimebook.tabulation.points;

/** How well an item of a rule set is known. */
public enum Provenance {

	/** Stands in a published document, which the note names. */
	PUBLISHED("published"),

	/** Recomputed from published score sheets without exception. */
	RECOMPUTED("recomputed"),

	/** Common practice without a document. */
	PRACTICE("practice"),

	/** Written down from memory: look it up before relying on it. */
	FROM_MEMORY("from memory");

	private final String words;

	Provenance(String words) {
		this.words = words;
	}

	/**
	 * Return the word used in tables and messages.
	 * @return for example {@code from memory}
	 */
	public String words() {
		return this.words;
	}

}
