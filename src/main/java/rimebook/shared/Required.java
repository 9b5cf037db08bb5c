package rimebook.shared;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/** Checks of single fields that every module makes in the same words. */
public final class Required {

	private Required() {
	}

	/**
	 * Return the text without surrounding blanks, or refuse it.
	 * @param field the field's name in the request
	 * @param text what was given
	 * @param most the greatest number of characters allowed
	 * @return the trimmed text, never empty
	 * @throws RuleViolationException {@code field-missing} or {@code field-too-long}
	 */
	public static String text(String field, @Nullable String text, int most) {
		String trimmed = (text != null) ? PlainText.of(text) : "";
		if (trimmed.isEmpty()) {
			throw RuleViolationException.ofField("field-missing", field, Sentence.of("shared.field.missing"));
		}
		return within(field, trimmed, most);
	}

	/**
	 * As {@link #text} for a field that may be left empty; returns an empty text then.
	 */
	public static String optional(String field, @Nullable String text, int most) {
		return within(field, (text != null) ? PlainText.of(text) : "", most);
	}

	/**
	 * Return the number if it lies between the bounds, or refuse it.
	 * @throws RuleViolationException {@code field-out-of-range}
	 */
	public static int number(String field, int value, int least, int most) {
		if (value < least || value > most) {
			throw RuleViolationException.ofField("field-out-of-range", field,
					Sentence.of("shared.field.out-of-range", value, least, most));
		}
		return value;
	}

	/**
	 * Read a whole number of up to four digits from a field that may be left empty.
	 * @return {@code null} where nothing was typed
	 * @throws RuleViolationException {@code field-not-a-number}
	 */
	public static @Nullable Integer numberOrNothing(String field, @Nullable String typed) {
		String plain = (typed != null) ? typed.strip() : "";
		if (plain.isEmpty()) {
			return null;
		}
		if (!plain.matches("\\d{1,4}")) {
			throw RuleViolationException.ofField("field-not-a-number", field, Sentence.of("shared.field.no-number"));
		}
		return Integer.valueOf(plain);
	}

	private static String within(String field, String text, int most) {
		if (text.length() > most) {
			throw RuleViolationException.ofField("field-too-long", field,
					Sentence.of("shared.field.too-long", text.length(), most));
		}
		PlainText.refused(text).ifPresent((character) -> {
			throw RuleViolationException.ofField("field-not-text", field,
					Sentence.of("shared.field.control-character", "U+%04X".formatted(character)));
		});
		return text;
	}

}
