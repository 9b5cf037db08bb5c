package rimebook.cli;

import java.util.function.Function;
import java.util.function.Supplier;

import rimebook.tabulation.TabulationException;

/**
 * One field of a file, for messages with its position.
 *
 * @param file the file
 * @param row the row
 * @param column index of the field, from 0
 */
record SheetField(CsvFile file, CsvFile.Row row, int column) {

	String text() {
		return this.row.field(this.column);
	}

	/** Make the refusal of what stands in the field. */
	InputException refuse(String wrong, String expected) {
		return this.file.fault(this.row.line(), this.column, "'" + text() + "' in column '"
				+ this.file.header().get(this.column) + "' " + wrong + "; expected " + expected);
	}

	InputException fault(String sentence) {
		return this.file.fault(this.row.line(), this.column, sentence);
	}

	<T> T read(Function<String, T> reader, String wrong, String expected) {
		try {
			return reader.apply(text());
		}
		catch (TabulationException ex) {
			throw refuse(wrong, expected);
		}
	}

	/** Make something of the row; what tabulation refuses is refused at this field. */
	<T> T make(Supplier<T> maker) {
		try {
			return maker.get();
		}
		catch (TabulationException ex) {
			throw fault(ex.getMessage());
		}
	}

}
