package rimebook.entries;

import java.util.List;

/**
 * What an import would do if it were accepted now. Nothing has been written.
 *
 * @param rows every row of the file, in its order
 * @param columnsLeftOut names of columns in the file that have no meaning here
 */
public record ImportPreview(List<ImportRow> rows, List<String> columnsLeftOut) {

	public ImportPreview {
		rows = List.copyOf(rows);
		columnsLeftOut = List.copyOf(columnsLeftOut);
	}

	/** The rows that can be entered. */
	public List<ImportRow> good() {
		return this.rows.stream().filter(ImportRow::isGood).toList();
	}

	/** The rows that have to be mended or set aside. */
	public List<ImportRow> bad() {
		return this.rows.stream().filter((row) -> !row.isGood()).toList();
	}

}
