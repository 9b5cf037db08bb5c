package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The columns of a file with one line of the score sheet in each row: what the line is,
 * then one column for each judge.
 *
 * @param file the file
 * @param header its columns by name
 * @param judges the index of each judge's column, in order
 */
record PanelColumns(CsvFile file, HeaderColumns header, List<Integer> judges) {

	/**
	 * Understand a header.
	 * @param names of the columns beside the entry and the judges, in lower case
	 * @param expected how the header should be, for messages
	 */
	static PanelColumns of(CsvFile file, List<String> names, String expected) {
		HeaderColumns header = new HeaderColumns(file,
				Pattern.compile("j[1-9]\\d?|" + String.join("|", names).toLowerCase(Locale.ROOT)), expected);
		List<String> judges = new ArrayList<>();
		while (header.find(judge(judges.size() + 1)).isPresent()) {
			judges.add(judge(judges.size() + 1));
		}
		header.nothingBeside(Stream.concat(names.stream(), judges.stream()).toList(),
				List.of(judge(judges.size() + 1)));
		if (judges.isEmpty()) {
			throw header.fault(file.header().size() - 1, "there is no column of a judge");
		}
		return new PanelColumns(file, header, header.indexes(judges));
	}

	private static String judge(int number) {
		return "j" + number;
	}

	int required(String name) {
		return this.header.required(name);
	}

	/** Return a field of a column that may be missing; empty where it is. */
	String optional(CsvFile.Row row, String name) {
		return this.header.find(name).map(row::field).orElse("");
	}

	/** Return where an optional column is that is known to be there. */
	int place(String name) {
		return this.header.find(name).orElseThrow();
	}

	Optional<Integer> last() {
		return this.judges.stream().reduce((before, after) -> after);
	}

}
