package rimebook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.IntStream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

import rimebook.shared.SpreadsheetCell;

/**
 * A standing ready to be printed. The last column is a sentence.
 *
 * @param title for people
 * @param columns names for programs
 * @param labels the same for people
 * @param rows one field for each column
 */
record Table(String title, List<String> columns, List<String> labels, List<List<String>> rows) {

	private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
		.setRecordSeparator('\n')
		.setNullString("")
		.get();

	String csv() {
		StringBuilder text = new StringBuilder();
		try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
			printer.printRecord(this.columns);
			for (List<String> row : this.rows) {
				printer.printRecord(row.stream().map((field) -> field.isEmpty() ? null : SpreadsheetCell.of(field)));
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return text.toString();
	}

	String text() {
		StringBuilder text = new StringBuilder(this.title).append("\n\n").append(line(this.labels)).append('\n');
		int sentence = this.columns.size() - 1;
		this.rows.forEach((row) -> text.append(line(row))
			.append('\n')
			.append(" ".repeat(width(0) + 2))
			.append(row.get(sentence))
			.append('\n'));
		return text.toString();
	}

	private String line(List<String> fields) {
		StringBuilder line = new StringBuilder();
		for (int i = 0; i < this.columns.size() - 1; i++) {
			String field = fields.get(i);
			line.append(field).append(" ".repeat(width(i) + 2 - length(field)));
		}
		return line.toString().stripTrailing();
	}

	private int width(int column) {
		return IntStream
			.concat(IntStream.of(length(this.labels.get(column))),
					this.rows.stream().mapToInt((row) -> length(row.get(column))))
			.max()
			.orElseThrow();
	}

	private static int length(String text) {
		return text.codePointCount(0, text.length());
	}

}
