package rimebook.shared;

import org.jspecify.annotations.Nullable;

/**
 * A rule of the competition or of a field refuses the request (HTTP 422).
 */
public final class RuleViolationException extends RimebookException {

	private static final long serialVersionUID = 1L;

	private final @Nullable String predicate;

	public RuleViolationException(String code, String message) {
		this(code, null, message);
	}

	public RuleViolationException(String code, @Nullable String field, String message) {
		this(code, field, message, null);
	}

	private RuleViolationException(String code, @Nullable String field, String message, @Nullable String predicate) {
		super(code, field, message);
		this.predicate = predicate;
	}

	/**
	 * Refuse what stands in a field. Programs are told the name that they sent, people
	 * what the page calls the field.
	 * @param predicate what is wrong, the rest of the sentence after the field's name,
	 * such as "is empty; please fill it in."
	 */
	public static RuleViolationException ofField(String code, String field, String predicate) {
		return new RuleViolationException(code, field, "The field '" + field + "' " + predicate, predicate);
	}

	/**
	 * What is wrong with the field, to follow its name; {@code null} where the sentence
	 * does not begin with one.
	 */
	public @Nullable String predicate() {
		return this.predicate;
	}

}
