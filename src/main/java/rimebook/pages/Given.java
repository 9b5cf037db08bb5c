package rimebook.pages;

import java.util.function.Function;

import org.jspecify.annotations.Nullable;

import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Reads what a form gives by itself, from a choice or a hidden field. Forms keep it as
 * text, so that a form with a spoiled field is still shown again with all that was typed.
 */
public final class Given {

	private Given() {
	}

	/**
	 * Read a field.
	 * @param field the field's name
	 * @param text what was sent, perhaps nothing
	 * @param reader throws {@link IllegalArgumentException} on what it cannot read
	 * @param otherwise what to tell the person instead
	 * @throws RuleViolationException {@code field-missing}
	 */
	public static <T> T read(String field, @Nullable String text, Function<String, T> reader, Sentence otherwise) {
		try {
			return reader.apply((text != null) ? text : "");
		}
		catch (IllegalArgumentException ex) {
			throw new RuleViolationException("field-missing", field, otherwise);
		}
	}

	/** Text as it was typed, empty where nothing was sent. */
	public static String text(@Nullable String typed) {
		return (typed != null) ? typed : "";
	}

}
