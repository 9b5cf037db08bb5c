package rimebook.results;

/**
 * One thing that has to be so before a result is signed.
 *
 * @param key what it is, the last part of the message {@code results.check.<key>}
 * @param state how it stands
 * @param sentence how it stands in words; a refused signature says it
 * @param path the page on which it is mended or read
 */
public record SignatureCondition(String key, State state, String sentence, String path) {

	/** How a condition stands. */
	public enum State {

		/** It is so. */
		MET,

		/** It is not so, and nobody signs before it is. */
		MISSING,

		/** Not so yet, but it holds nothing back. */
		DUE

	}

	/** It is so. */
	public static SignatureCondition met(String key, String sentence, String path) {
		return new SignatureCondition(key, State.MET, sentence, path);
	}

	/** It is not so: a signature is refused with that sentence. */
	public static SignatureCondition missing(String key, String sentence, String path) {
		return new SignatureCondition(key, State.MISSING, sentence, path);
	}

	/** It is not so yet; that holds no signature back. */
	public static SignatureCondition due(String key, String sentence, String path) {
		return new SignatureCondition(key, State.DUE, sentence, path);
	}

	/** Tell whether a signature is refused for it. */
	public boolean holdsBack() {
		return this.state == State.MISSING;
	}

}
