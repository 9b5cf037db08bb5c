package rimebook.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rows of a file by entry, entries in the order in which they first come.
 *
 * @param file the file
 * @param column index of the entry
 * @param rows of each entry
 */
record EntryRows(CsvFile file, int column, Map<String, List<CsvFile.Row>> rows) {

	static EntryRows of(CsvFile file, int column) {
		Map<String, List<CsvFile.Row>> rows = new LinkedHashMap<>();
		for (CsvFile.Row row : file.rows()) {
			String entry = row.field(column);
			if (entry.isEmpty()) {
				throw file.fault(row.line(), column, "the entry is missing; expected its name or number");
			}
			rows.computeIfAbsent(entry, (name) -> new ArrayList<>()).add(row);
		}
		return new EntryRows(file, column, rows);
	}

	List<CsvFile.Row> of(String entry) {
		return this.rows.getOrDefault(entry, List.of());
	}

	/**
	 * Refuse an entry that another file has no rows of.
	 * @param what the other file has, in the plural
	 */
	void checkAllIn(EntryRows other, String what) {
		this.rows.forEach((entry, rows) -> {
			if (!other.rows.containsKey(entry)) {
				throw this.file.fault(rows.get(0).line(), this.column, "entry '" + entry + "' has no " + what + " in "
						+ other.file.name() + "; expected the same entries in both files");
			}
		});
	}

}
