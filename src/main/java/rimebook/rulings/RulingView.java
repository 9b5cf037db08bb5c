package rimebook.rulings;

import java.time.Instant;

/**
 * One ruling on a question.
 *
 * @param number 1 for the first; a greater one supersedes those before
 * @param answer what the referee answered
 * @param reason why the one before no longer holds, empty for the first
 * @param givenAt when, UTC
 */
public record RulingView(int number, Answer answer, String reason, String givenBy, Instant givenAt) {

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

	/**
	 * What the referee answers to a question.
	 *
	 * @param condition empty unless the verdict has one
	 * @param rule the rule it rests on, may be empty
	 * @param shown whether the public may see it
	 */
	public record Answer(Verdict verdict, String condition, String grounds, String rule, boolean shown) {
	}

}
