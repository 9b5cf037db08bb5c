package rimebook.shared;

import org.jspecify.annotations.Nullable;

/**
 * A rule of the competition or of a field refuses the request (HTTP 422).
 */
public final class RuleViolationException extends RimebookException {

	private static final long serialVersionUID = 1L;

	public RuleViolationException(String code, String message) {
		super(code, null, message);
	}

	public RuleViolationException(String code, @Nullable String field, String message) {
		super(code, field, message);
	}

}
