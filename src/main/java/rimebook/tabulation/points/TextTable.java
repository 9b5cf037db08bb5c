package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * A table of a rule set as comma-separated text: a header, then one row a line; lines
 * that are empty or begin with {@code #} are left out. Whatever is wrong is refused with
 * its line and column.
 */
final class TextTable {

	private final Sentence name;

	private final TextLine header;

	private final List<Row> rows = new ArrayList<>();

	private TextTable(Sentence name, List<TextLine> lines) {
		this.name = name;
		this.header = lines.get(0);
		lines.stream().skip(1).forEach((line) -> this.rows.add(new Row(line)));
	}

	/**
	 * Read a table.
	 * @param kind what it holds, named by {@code tabulation.table.<kind>}
	 */
	static TextTable parse(String kind, String text) {
		Sentence name = Sentence.of("tabulation.table." + kind);
		List<TextLine> lines = lines(text);
		if (lines.size() < 2) {
			throw Refusal.emptyTable(name).at(new TabulationException.TextPosition(1, 1));
		}
		TextTable table = new TextTable(name, lines);
		table.check();
		return table;
	}

	private static List<TextLine> lines(String text) {
		String[] lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\\R", -1);
		return IntStream.range(0, lines.length)
			.filter((i) -> !lines[i].isBlank() && !lines[i].startsWith("#"))
			.mapToObj((i) -> TextLine.parse(i + 1, lines[i]))
			.toList();
	}

	private void check() {
		List<String> names = this.header.fields();
		for (int i = 0; i < names.size(); i++) {
			if (names.indexOf(names.get(i)) < i) {
				throw Refusal.duplicateColumn(this.name, names.get(i)).at(this.header.position(i));
			}
		}
		for (Row row : this.rows) {
			int found = row.line.fields().size();
			if (found != names.size()) {
				throw Refusal.unevenRow(this.name, found, names.size())
					.at(row.line.position(Math.min(found, names.size())));
			}
		}
	}

	boolean has(String column) {
		return this.header.fields().contains(column);
	}

	List<Row> rows() {
		return this.rows;
	}

	/** Refuse a value that stands twice in a column. */
	void checkEachOnce(String column) {
		HashSet<String> seen = new HashSet<>();
		for (Row row : this.rows) {
			if (!seen.add(row.text(column))) {
				throw row.refuse(column, Refusal.duplicateValue(this.name, column, row.text(column)));
			}
		}
	}

	/** One line below the header. */
	final class Row {

		private final TextLine line;

		private Row(TextLine line) {
			this.line = line;
		}

		private int index(String column) {
			int index = TextTable.this.header.fields().indexOf(column);
			if (index < 0) {
				throw Refusal.missingColumn(TextTable.this.name, column).at(TextTable.this.header.position(0));
			}
			return index;
		}

		boolean has(String column) {
			return TextTable.this.has(column);
		}

		String text(String column) {
			return this.line.fields().get(index(column));
		}

		Points points(String column) {
			return read(column, Points::parse);
		}

		int whole(String column) {
			return read(column, (text) -> {
				if (!text.matches("\\d{1,6}")) {
					throw Refusal.notWhole(text);
				}
				return Integer.parseInt(text);
			});
		}

		<T> T choice(String column, Map<String, T> choices) {
			return read(column, (text) -> {
				T chosen = choices.get(text);
				if (chosen == null) {
					throw Refusal.notAChoice(text, choices.keySet());
				}
				return chosen;
			});
		}

		/** Make something of a field; what is refused gets the field's position. */
		<T> T read(String column, Function<String, T> reader) {
			String text = text(column);
			try {
				return reader.apply(text);
			}
			catch (TabulationException ex) {
				throw ex.position().isPresent() ? ex : refuse(column, ex);
			}
		}

		TabulationException refuse(String column, TabulationException refusal) {
			return refusal.at(this.line.position(index(column)));
		}

	}

}
