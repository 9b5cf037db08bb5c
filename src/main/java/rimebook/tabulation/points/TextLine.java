package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;

import rimebook.tabulation.TabulationException;

/**
 * One line of comma-separated text. A field with a comma or a quotation mark stands in
 * quotation marks, which are doubled inside it; spaces around a field are no part of it.
 *
 * @param number of the line, from 1
 * @param fields in order
 */
record TextLine(int number, List<String> fields) {

	TextLine {
		fields = List.copyOf(fields);
	}

	static TextLine parse(int number, String line) {
		List<String> fields = new ArrayList<>();
		int start = 0;
		while (start <= line.length()) {
			int end = endOfField(line, start);
			if (end < 0) {
				throw Refusal.unclosedQuote().at(new TabulationException.TextPosition(number, fields.size() + 1));
			}
			fields.add(field(line.substring(start, end).strip()));
			start = end + 1;
		}
		return new TextLine(number, fields);
	}

	/** Return where a field ends, or -1 where its quotation marks do not. */
	private static int endOfField(String line, int start) {
		boolean quoted = false;
		for (int i = start; i < line.length(); i++) {
			if (line.charAt(i) == '"') {
				quoted = !quoted;
			}
			else if (line.charAt(i) == ',' && !quoted) {
				return i;
			}
		}
		return quoted ? -1 : line.length();
	}

	/** Take the quotation marks off; their number is even. */
	private static String field(String text) {
		boolean quoted = text.startsWith("\"") && text.endsWith("\"");
		return quoted ? text.substring(1, text.length() - 1).replace("\"\"", "\"") : text;
	}

	TabulationException.TextPosition position(int index) {
		return new TabulationException.TextPosition(this.number, index + 1);
	}

}
