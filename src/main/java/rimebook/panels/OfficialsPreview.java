package rimebook.panels;

import java.util.List;

/**
 * What a file of officials would do if it were accepted now. Nothing has been written.
 *
 * @param rows every row of the file, in its order
 * @param columnsLeftOut names of columns in the file that have no meaning here
 */
public record OfficialsPreview(List<OfficialRow> rows, List<String> columnsLeftOut) {

	public OfficialsPreview {
		rows = List.copyOf(rows);
		columnsLeftOut = List.copyOf(columnsLeftOut);
	}

	/** The rows that add somebody. */
	public List<OfficialRow> added() {
		return this.rows.stream().filter(OfficialRow::isNew).toList();
	}

	/** The rows that have to be mended or set aside. */
	public List<OfficialRow> bad() {
		return this.rows.stream().filter((row) -> !row.problems().isEmpty()).toList();
	}

	/** How many rows say what the register says already. */
	public long known() {
		return this.rows.stream().filter(OfficialRow::known).count();
	}

}
