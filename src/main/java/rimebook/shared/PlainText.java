package rimebook.shared;

import java.text.Normalizer;
import java.util.OptionalInt;

/**
 * What a typed text may hold: characters that are seen, and line breaks. Those that turn
 * the direction of what follows, control a machine or are no characters at all make one
 * text look like another and are refused; those of no width are dropped, since they come
 * along unseen when something is copied.
 */
final class PlainText {

	/** Soft hyphen, blanks and joiners of no width, mark of byte order. */
	private static final String UNSEEN = "[\\u00AD\\u200B\\u2060\\uFEFF]";

	private PlainText() {
	}

	/** The text without unseen characters and blanks around it. */
	static String of(String typed) {
		return typed.replaceAll(UNSEEN, "").strip();
	}

	/** The same with characters of one meaning written one way (NFKC), single blanks. */
	static String ofName(String typed) {
		return Normalizer.normalize(of(typed), Normalizer.Form.NFKC).replaceAll(" {2,}", " ").strip();
	}

	/** The first character that no text may hold, such as NUL or U+202E. */
	static OptionalInt refused(String text) {
		return text.codePoints().filter(PlainText::isRefused).findFirst();
	}

	private static boolean isRefused(int character) {
		return switch (Character.getType(character)) {
			case Character.CONTROL -> character != '\n' && character != '\r' && character != '\t';
			case Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE -> !isJoiner(character);
			case Character.UNASSIGNED -> (character & 0xFFFE) == 0xFFFE || (character >= 0xFDD0 && character <= 0xFDEF);
			default -> false;
		};
	}

	/** Some scripts are not written without them. */
	private static boolean isJoiner(int character) {
		return character == 0x200C || character == 0x200D;
	}

}
