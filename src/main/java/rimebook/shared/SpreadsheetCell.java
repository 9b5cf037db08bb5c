package rimebook.shared;

import java.util.regex.Pattern;

/**
 * A text as a cell of a CSV file. A spreadsheet takes what begins with certain signs for
 * a formula and runs it; an apostrophe in front makes it a text again. Numbers stay.
 */
public final class SpreadsheetCell {

	private static final Pattern FORMULA = Pattern.compile("[=+\\-@\t\r\n].*", Pattern.DOTALL);

	private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");

	private static final Pattern GUARDED = Pattern.compile("'[=+\\-@\t\r\n].*", Pattern.DOTALL);

	private SpreadsheetCell() {
	}

	/** The text to write. */
	public static String of(String text) {
		boolean formula = FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches();
		return formula ? "'" + text : text;
	}

	/** The text that was meant by what is read. */
	public static String read(String cell) {
		return GUARDED.matcher(cell).matches() ? cell.substring(1) : cell;
	}

}
