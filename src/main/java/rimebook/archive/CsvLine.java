package rimebook.archive;

import java.util.List;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.shared.SpreadsheetCell;

/**
 * One line of a CSV file that a spreadsheet opens without taking a text for a formula.
 */
final class CsvLine {

	private CsvLine() {
	}

	/** The line with its end; nothing is an empty cell. */
	static String of(List<? extends @Nullable Object> cells) {
		return cells.stream().map(CsvLine::cell).collect(Collectors.joining(",", "", "\r\n"));
	}

	private static String cell(@Nullable Object value) {
		if (value == null) {
			return "";
		}
		String text = SpreadsheetCell.of(value.toString());
		boolean quoted = text.chars().anyMatch((sign) -> "\",\r\n".indexOf(sign) >= 0);
		return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
	}

}
