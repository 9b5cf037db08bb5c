package rimebook.entries;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import rimebook.shared.RuleViolationException;
import rimebook.shared.SpreadsheetCell;

/**
 * Reads an import file: columns by their names in the header, in any order, separated by
 * the sign that the header has between them, values with that sign or a line break in
 * quotation marks. Empty lines count as lines but are no rows.
 */
final class ImportFile {

	private static final String HEADER = ImportColumns.HEADER;

	private static final List<String> NEEDED = ImportColumns.NAMES.subList(0, 4);

	private static final int MOST_ROWS = 500;

	private static final char BYTE_ORDER_MARK = '\uFEFF';

	private final List<String> header;

	private final List<ImportRow> rows = new ArrayList<>();

	private ImportFile(CSVParser parser, String separator) {
		Lines lines = new Lines(parser);
		CSVRecord first = lines.next();
		if (first != null && ImportColumns.isSeparatorLine(String.join(separator, first.values()))) {
			first = lines.next();
		}
		if (first == null) {
			throw refusal("import-empty",
					"There is nothing in the file. It should begin with the line " + HEADER + ".");
		}
		this.header = first.stream().map(ImportColumns::nameOf).toList();
		checkHeader();
		for (CSVRecord record = lines.next(); record != null; record = lines.next()) {
			add(lines.lineOfRecord(), record);
		}
		checkNumber();
	}

	/**
	 * Read a file.
	 * @throws RuleViolationException with a code {@code import-…} if it cannot be read as
	 * a whole
	 */
	static ImportFile read(String text) {
		String plain = (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) ? text.substring(1) : text;
		CSVFormat format = CSVFormat.DEFAULT.builder()
			.setDelimiter(ImportColumns.separatorOf(plain))
			.setIgnoreEmptyLines(false)
			.get();
		try (CSVParser parser = CSVParser.parse(new StringReader(plain), format)) {
			return new ImportFile(parser, format.getDelimiterString());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	List<ImportRow> rows() {
		return this.rows;
	}

	/** Names of columns that have no meaning here. */
	List<String> columnsLeftOut() {
		return this.header.stream().filter((name) -> !ImportColumns.NAMES.contains(name)).toList();
	}

	private void checkHeader() {
		Set<String> missing = new TreeSet<>(NEEDED);
		this.header.forEach(missing::remove);
		if (!missing.isEmpty()) {
			throw refusal("import-header",
					"The first line lacks " + inWords(missing) + ". It should name the columns: " + HEADER + ".");
		}
		if (this.header.stream().distinct().count() < this.header.size()) {
			throw refusal("import-header", "The first line names a column twice. It should be: " + HEADER + ".");
		}
	}

	private static String inWords(Set<String> names) {
		return ((names.size() == 1) ? "the column " : "the columns ") + String.join(", ", names);
	}

	private void add(int line, CSVRecord record) {
		List<RowProblem> problems = new ArrayList<>();
		if (record.size() != this.header.size()) {
			problems.add(new RowProblem("row", "The row has " + record.size() + " columns.", "The header has "
					+ this.header.size() + "; a value with the sign between columns in it goes in quotation marks."));
		}
		this.rows.add(new ImportRow(line, value(record, "event"), value(record, "club"), value(record, "town"),
				value(record, "team"), value(record, "spoken_as"), problems));
	}

	private String value(CSVRecord record, String column) {
		int index = this.header.indexOf(column);
		return (index >= 0 && index < record.size()) ? SpreadsheetCell.read(record.get(index).strip()) : "";
	}

	private void checkNumber() {
		if (this.rows.isEmpty()) {
			throw refusal("import-empty", "There is no row below the header. Put one line for each entry.");
		}
		if (this.rows.size() > MOST_ROWS) {
			throw refusal("import-too-long",
					"The file has " + this.rows.size() + " rows; at most " + MOST_ROWS + " fit. Split it in parts.");
		}
	}

	static RuleViolationException refusal(String code, String message) {
		return new RuleViolationException(code, "csv", message);
	}

}
