package rimebook.cli;

import java.util.HashMap;
import java.util.Map;

/** Reads the entry of each row, which must be there and once only. */
final class EntryNames {

	private final CsvFile file;

	private final int column;

	private final Map<String, Long> lines = new HashMap<>();

	EntryNames(CsvFile file, int column) {
		this.file = file;
		this.column = column;
	}

	/** Check all rows. */
	void check() {
		this.file.rows().forEach((row) -> {
			String entry = row.field(this.column);
			if (entry.isEmpty()) {
				throw this.file.fault(row.line(), this.column, "the entry is missing; expected its name or number");
			}
			Long earlier = this.lines.putIfAbsent(entry, row.line());
			if (earlier != null) {
				throw this.file.fault(row.line(), this.column,
						"entry '" + entry + "' is also on line " + earlier + "; expected each entry once");
			}
		});
	}

}
