package rimebook.panels;

import java.util.List;

/**
 * One row of a file of officials as it was read.
 *
 * @param line the line on which the row begins, from 1, the header counted
 * @param known whether the register has the official and nothing here contradicts it, so
 * that nothing is to do
 * @param problems what is wrong with it, sentences; empty when it can be registered
 */
public record OfficialRow(int line, String name, String club, String qualification, boolean known,
		List<String> problems) {

	public OfficialRow {
		problems = List.copyOf(problems);
	}

	/** Tell whether the row would add somebody to the register. */
	public boolean isNew() {
		return !this.known && this.problems.isEmpty();
	}

}
