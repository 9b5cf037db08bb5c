package rimebook.rulings;

/** What the referee ruled. */
public enum Verdict {

	/** It may be done as asked. */
	ALLOWED("allowed"),

	/** It may be done under a condition, which the ruling names. */
	CONDITIONAL("allowed with a condition"),

	/** It may not be done. */
	NOT_ALLOWED("not allowed");

	private final String words;

	Verdict(String words) {
		this.words = words;
	}

	String words() {
		return this.words;
	}

}
