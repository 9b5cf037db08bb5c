package rimebook.tables;

import java.util.Map;

/**
 * One row of a table as it was read.
 *
 * @param line the line on which the row begins, from 1, the header counted
 * @param columns how many values it has
 * @param fits whether these are as many as the header has
 * @param values by the names of the columns, without surrounding blanks
 */
public record TableRow(int line, int columns, boolean fits, Map<String, String> values) {

	public TableRow {
		values = Map.copyOf(values);
	}

	/** The value of a column, empty where the row or the table has none. */
	public String value(String column) {
		return this.values.getOrDefault(column, "");
	}

}
