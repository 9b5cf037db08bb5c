package rimebook.shared;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * A rule of the competition or of a field refuses the request (HTTP 422).
 */
public final class RuleViolationException extends RimebookException {

	private static final long serialVersionUID = 2L;

	private final @Nullable Sentence predicate;

	public RuleViolationException(String code, Sentence sentence) {
		this(code, null, sentence);
	}

	public RuleViolationException(String code, @Nullable String field, Sentence sentence) {
		this(code, field, sentence, null);
	}

	private RuleViolationException(String code, @Nullable String field, Sentence sentence,
			@Nullable Sentence predicate) {
		super(code, field, sentence);
		this.predicate = predicate;
	}

	/**
	 * Refuse what stands in a field. Programs are told the name that they sent, people
	 * what the page calls the field.
	 * @param predicate what is wrong, the rest of the sentence after the field's name,
	 * such as "is empty; please fill it in."
	 */
	public static RuleViolationException ofField(String code, String field, Sentence predicate) {
		return new RuleViolationException(code, field, Sentence.of("shared.field", field, predicate), predicate);
	}

	/**
	 * What is wrong with the field, to follow its name; {@code null} where the sentence
	 * does not begin with one.
	 */
	public @Nullable Sentence predicate() {
		return this.predicate;
	}

}
