package rimebook.entries;

import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/**
 * What a name of a club, town or team may be: one line that a spreadsheet will not take
 * for a formula when the entries are exported.
 */
final class Name {

	static final int LONGEST = 120;

	private Name() {
	}

	static String required(String field, String text) {
		return plain(field, Required.text(field, text, LONGEST));
	}

	static String optional(String field, String text) {
		return plain(field, Required.optional(field, text, LONGEST));
	}

	private static String plain(String field, String text) {
		if (text.chars().anyMatch(Character::isISOControl)) {
			throw new RuleViolationException("field-not-text", field,
					"The field '" + field + "' holds a line break or a tab; a name is one line of plain text.");
		}
		if (!text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0) {
			throw new RuleViolationException("field-formula", field, "The field '" + field + "' begins with '"
					+ text.charAt(0) + "', which a spreadsheet takes for a formula; begin with a letter or a digit.");
		}
		return text;
	}

}
