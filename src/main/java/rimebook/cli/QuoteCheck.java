package rimebook.cli;

/**
 * Finds the position of a quoted field that is not closed, or closed and followed by more
 * text; the parser would stop there without naming the column.
 */
final class QuoteCheck {

	private final String file;

	private final String text;

	private int at;

	private long line = 1;

	private int column = 1;

	QuoteCheck(String file, String text) {
		this.file = file;
		this.text = text;
	}

	/** Throw where the quotes are wrong. */
	void check() {
		while (this.at < this.text.length()) {
			skipSpaces();
			if (current() == '"') {
				quotedField();
			}
			while (!atEndOfField()) {
				this.at++;
			}
			endOfField();
		}
	}

	private void quotedField() {
		InputException notClosed = InputException.at(this.file, this.line, this.column,
				"the quoted field is not closed; expected a quotation mark at its end");
		this.at++;
		while (current() != '"' || isDoubled()) {
			if (this.at >= this.text.length()) {
				throw notClosed;
			}
			this.line += isEndOfLine() ? 1 : 0;
			this.at += (current() == '"') ? 2 : 1;
		}
		this.at++;
		skipSpaces();
		if (!atEndOfField()) {
			throw InputException.at(this.file, this.line, this.column,
					"there is text behind a quoted field; expected a comma or the end of the line");
		}
	}

	private void skipSpaces() {
		while (!atEndOfField() && Character.isWhitespace(current())) {
			this.at++;
		}
	}

	private void endOfField() {
		if (isEndOfLine()) {
			this.line++;
			this.column = 0;
		}
		this.column++;
		this.at++;
	}

	private boolean atEndOfField() {
		return this.at >= this.text.length() || current() == ',' || current() == '\n' || current() == '\r';
	}

	/** A carriage return before a line feed is part of it. */
	private boolean isEndOfLine() {
		return current() == '\n' || (current() == '\r' && charAt(this.at + 1) != '\n');
	}

	private boolean isDoubled() {
		return charAt(this.at + 1) == '"';
	}

	private char current() {
		return charAt(this.at);
	}

	private char charAt(int index) {
		return (index < this.text.length()) ? this.text.charAt(index) : 0;
	}

}
