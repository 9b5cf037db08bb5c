package rimebook.tables;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

import rimebook.shared.RuleViolationException;
import rimebook.shared.SpreadsheetCell;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Reads a table: columns by their names in the header, in any order, separated by the
 * sign that the header has between them, values with that sign or a line break in
 * quotation marks. Empty lines count as lines but are no rows.
 */
public final class TableFile {

	/** The most rows that are looked at where nobody says otherwise. */
	public static final int MOST_ROWS = 500;

	private static final char BYTE_ORDER_MARK = '\uFEFF';

	private final TableColumns columns;

	private final List<String> header;

	private final List<Row> rows = new ArrayList<>();

	private TableFile(TableColumns columns, CSVParser parser, String separator, int mostRows) {
		this.columns = columns;
		TableLines lines = new TableLines(parser);
		CSVRecord first = lines.next();
		if (first != null && TableColumns.isSeparatorLine(String.join(separator, first.values()))) {
			first = lines.next();
		}
		if (first == null) {
			throw refusal("import-empty", Sentence.of("tables.empty", columns.header()));
		}
		this.header = first.stream().map(columns::nameOf).toList();
		checkHeader();
		for (CSVRecord record = lines.next(); record != null; record = lines.next()) {
			this.rows.add(row(lines.lineOfRecord(), record));
		}
		checkNumber(mostRows);
	}

	/**
	 * Read a table of at most 500 rows.
	 * @throws RuleViolationException with a code {@code import-…} if it cannot be read as
	 * a whole
	 */
	public static TableFile read(String text, TableColumns columns) {
		return read(text, columns, MOST_ROWS);
	}

	/**
	 * Read a table of at most so many rows.
	 * @throws RuleViolationException with a code {@code import-…} if it cannot be read as
	 * a whole
	 */
	public static TableFile read(String text, TableColumns columns, int mostRows) {
		TableText.checkSize(text.length());
		String plain = (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) ? text.substring(1) : text;
		CSVFormat format = CSVFormat.DEFAULT.builder()
			.setDelimiter(columns.separatorOf(plain))
			.setIgnoreEmptyLines(false)
			.get();
		try (CSVParser parser = CSVParser.parse(new StringReader(plain), format)) {
			return new TableFile(columns, parser, format.getDelimiterString(), mostRows);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** The rows in their order, at least one. */
	public List<Row> rows() {
		return List.copyOf(this.rows);
	}

	/** How many columns the header names. */
	public int width() {
		return this.header.size();
	}

	/** Names of columns that have no meaning here. */
	public List<String> columnsLeftOut() {
		return this.header.stream().filter((name) -> !this.columns.names().contains(name)).toList();
	}

	private void checkHeader() {
		Set<String> missing = new TreeSet<>(this.columns.needed());
		this.header.forEach(missing::remove);
		if (!missing.isEmpty()) {
			throw refusal("import-header", Sentence.of("tables.columns-missing", missing.size(),
					Series.withCommas(missing), this.columns.header()));
		}
		if (this.header.stream().distinct().count() < this.header.size()) {
			throw refusal("import-header", Sentence.of("tables.column-twice", this.columns.header()));
		}
	}

	private Row row(int line, CSVRecord record) {
		Map<String, String> values = new HashMap<>();
		for (int column = 0; column < Math.min(record.size(), this.header.size()); column++) {
			values.put(this.header.get(column), SpreadsheetCell.read(record.get(column).strip()));
		}
		return new Row(line, record.size(), record.size() == this.header.size(), values);
	}

	private void checkNumber(int mostRows) {
		if (this.rows.isEmpty()) {
			throw refusal("import-empty", Sentence.of("tables.no-row"));
		}
		if (this.rows.size() > mostRows) {
			throw refusal("import-too-long", Sentence.of("tables.too-long", this.rows.size(), mostRows));
		}
	}

	/** A refusal of the text as it was given. */
	public static RuleViolationException refusal(String code, Sentence sentence) {
		return new RuleViolationException(code, "csv", sentence);
	}

	/**
	 * One row of a table as it was read.
	 *
	 * @param line the line on which the row begins, from 1, the header counted
	 * @param columns how many values it has
	 * @param fits whether these are as many as the header has
	 * @param values by the names of the columns, without surrounding blanks
	 */
	public record Row(int line, int columns, boolean fits, Map<String, String> values) {

		public Row {
			values = Map.copyOf(values);
		}

		/** The value of a column, empty where the row or the table has none. */
		public String value(String column) {
			return this.values.getOrDefault(column, "");
		}

	}

}
