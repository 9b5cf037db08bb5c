package rimebook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file in UTF-8 with a header: fields trimmed, blank lines left out, every row as
 * long as the header, and the line of each row known.
 *
 * @param name as typed, for messages
 * @param header names of the columns
 * @param headerLine where they stand
 * @param rows what follows
 */
record CsvFile(String name, List<String> header, long headerLine, List<Row> rows) {

	private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder()
		.setIgnoreSurroundingSpaces(true)
		.setIgnoreEmptyLines(false)
		.get();

	/**
	 * Read a file.
	 * @throws InputException where it cannot be read, is no CSV, has no header, no row or
	 * a row of another length
	 */
	static CsvFile read(String name) {
		CsvFile file = readMaybeWithoutRows(name);
		if (file.rows.isEmpty()) {
			throw InputException.at(name, file.headerLine + 1, 1,
					"there is no row; expected one for each entry below the header");
		}
		return file;
	}

	/**
	 * Read a file in which nothing may stand below the header.
	 * @throws InputException as for any other file
	 */
	static CsvFile readMaybeWithoutRows(String name) {
		String text = text(name);
		new QuoteCheck(name, text).check();
		List<Row> rows = rows(text);
		if (rows.isEmpty()) {
			throw InputException.at(name, 1, 1, "the file is empty; expected a header and one row for each entry");
		}
		Row header = rows.get(0);
		CsvFile file = new CsvFile(name, header.fields(), header.line(), rows.subList(1, rows.size()));
		file.checkLengths();
		return file;
	}

	/**
	 * Read a file as text.
	 * @throws InputException where it cannot be read
	 */
	static String text(String name) {
		try {
			String text = decoded(name, Files.readAllBytes(Path.of(name)));
			return text.startsWith("\uFEFF") ? text.substring(1) : text;
		}
		catch (NoSuchFileException | InvalidPathException ex) {
			throw InputException.of(name, "there is no such file");
		}
		catch (IOException ex) {
			throw InputException.of(name, "the file cannot be read");
		}
	}

	private static String decoded(String name, byte[] bytes) {
		CharBuffer text = CharBuffer.allocate(bytes.length);
		ByteBuffer left = ByteBuffer.wrap(bytes);
		CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
		CoderResult end = decoder.decode(left, text, true);
		text.flip();
		if (end.isError()) {
			throw notText(name, text.toString(), Byte.toUnsignedInt(left.get(left.position())));
		}
		return text.toString();
	}

	/**
	 * Say where the first byte stands that is no text.
	 * @param before what could be read up to it
	 */
	private static InputException notText(String name, String before, int wrong) {
		long line = 1;
		int column = 1;
		boolean quoted = false;
		for (int i = 0; i < before.length(); i++) {
			char sign = before.charAt(i);
			boolean ends = sign == '\n' || (sign == '\r' && !before.startsWith("\n", i + 1));
			quoted ^= sign == '"';
			line += ends ? 1 : 0;
			column = (ends && !quoted) ? 1 : column + ((sign == ',' && !quoted) ? 1 : 0);
		}
		return InputException.at(name, line, column,
				"the file is not UTF-8 text (byte %02X); expected CSV in UTF-8".formatted(wrong));
	}

	private static List<Row> rows(String text) {
		List<Row> rows = new ArrayList<>();
		try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
			Iterator<CSVRecord> records = parser.iterator();
			for (long line = 1; records.hasNext(); line = parser.getCurrentLineNumber() + 1) {
				List<String> fields = records.next().stream().map(String::strip).toList();
				if (fields.size() > 1 || !fields.get(0).isEmpty()) {
					rows.add(new Row(line, fields));
				}
			}
			return rows;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private void checkLengths() {
		for (Row row : this.rows) {
			int found = row.fields().size();
			int expected = this.header.size();
			if (found != expected) {
				throw fault(row.line(), Math.min(found, expected), "the row has " + found + " fields; expected "
						+ expected + ", one for each column of the header");
			}
		}
	}

	/**
	 * Make the refusal of a field.
	 * @param column index of the field, from 0
	 */
	InputException fault(long line, int column, String sentence) {
		return InputException.at(this.name, line, column + 1, sentence);
	}

	/**
	 * One row.
	 *
	 * @param line number of its first line, from 1
	 * @param fields without surrounding spaces
	 */
	record Row(long line, List<String> fields) {

		String field(int column) {
			return this.fields.get(column);
		}

	}

}
