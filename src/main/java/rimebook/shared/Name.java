package rimebook.shared;

import java.util.Locale;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * What a name of a person, club, town or team may be: one line, written in one way
 * (NFKC), that a spreadsheet will not take for a formula.
 */
public final class Name {

	public static final int LONGEST = 120;

	private Name() {
	}

	/**
	 * Return the name in one way of writing, or refuse it.
	 * @throws RuleViolationException {@code field-missing} and the like
	 */
	public static String required(String field, @Nullable String text) {
		return plain(field, Required.text(field, typed(text), LONGEST));
	}

	/** As {@link #required} for a name that may be left out. */
	public static String optional(String field, @Nullable String text) {
		return plain(field, Required.optional(field, typed(text), LONGEST));
	}

	private static String typed(@Nullable String text) {
		return (text != null) ? PlainText.ofName(text) : "";
	}

	/**
	 * The name as names are compared: blanks, case and the way letters are composed do
	 * not matter.
	 */
	public static String compared(String name) {
		return PlainText.ofName(name).replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
	}

	private static String plain(String field, String text) {
		if (text.codePoints().anyMatch((character) -> Character.getType(character) == Character.FORMAT)) {
			throw RuleViolationException.ofField("field-not-text", field, Sentence.of("shared.field.unseen-character"));
		}
		if (text.chars().anyMatch(Character::isISOControl)) {
			throw RuleViolationException.ofField("field-not-text", field, Sentence.of("shared.field.not-one-line"));
		}
		if (!text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0) {
			throw RuleViolationException.ofField("field-formula", field,
					Sentence.of("shared.field.formula", text.substring(0, 1)));
		}
		return text;
	}

}
