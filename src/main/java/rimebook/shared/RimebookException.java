package rimebook.shared;

import org.jspecify.annotations.Nullable;

/**
 * A request that cannot be done, with a stable code for programs and a sentence for
 * people. Everything else that is thrown is a bug.
 */
public abstract sealed class RimebookException extends RuntimeException
		permits NotFoundException, ConflictException, RuleViolationException {

	private static final long serialVersionUID = 1L;

	private final String code;

	private final String sentence;

	private final @Nullable String field;

	RimebookException(String code, @Nullable String field, String message) {
		super(message);
		this.code = code;
		this.sentence = message;
		this.field = field;
	}

	/** What a person reads. */
	@Override
	public String getMessage() {
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
