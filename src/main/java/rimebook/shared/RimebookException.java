package rimebook.shared;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * A request that cannot be done, with a stable code for programs and a sentence for
 * people. Everything else that is thrown is a bug.
 */
public abstract sealed class RimebookException extends RuntimeException
		permits NotFoundException, ConflictException, RuleViolationException {

	private static final long serialVersionUID = 2L;

	private final String code;

	private final @Nullable String field;

	private final Sentence sentence;

	RimebookException(String code, @Nullable String field, Sentence sentence) {
		this.code = code;
		this.field = field;
		this.sentence = sentence;
	}

	/** The sentence in English, for the log and for programs. */
	@Override
	public String getMessage() {
		return this.sentence.english();
	}

	/** What a person reads, in their language. */
	public Sentence sentence() {
		return this.sentence;
	}

	/** The stable code in kebab-case, such as {@code panel-incomplete}. */
	public String code() {
		return this.code;
	}

	/** The field of the request that is at fault, or {@code null} for the whole of it. */
	public @Nullable String field() {
		return this.field;
	}

}
