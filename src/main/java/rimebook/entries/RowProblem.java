package rimebook.entries;

/**
 * What is wrong in one row of an import file.
 *
 * @param column the column's name, or "row" for the whole of it
 * @param wrong what is wrong, a sentence
 * @param expected what would be right, a sentence
 * @param isQuestion whether nothing is wrong if the person says so
 */
public record RowProblem(String column, String wrong, String expected, boolean isQuestion) {

	/** Something that is wrong whatever the person says. */
	public RowProblem(String column, String wrong, String expected) {
		this(column, wrong, expected, false);
	}

}
