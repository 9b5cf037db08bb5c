package rimebook.entries;

import java.util.List;

/**
 * One row of an import file as it was read.
 *
 * @param line the line on which the row begins, from 1, the header counted
 * @param problems what is wrong with it; empty when it can be entered
 */
public record ImportRow(int line, String event, String club, String town, String team, String spokenAs,
		List<RowProblem> problems) {

	public ImportRow {
		problems = List.copyOf(problems);
	}

	/** Tell whether the row can be entered as it is. */
	public boolean isGood() {
		return this.problems.isEmpty();
	}

	/** Tell whether only the person's word is missing for it to be entered. */
	public boolean isAsked() {
		return !isGood() && this.problems.stream().allMatch(RowProblem::isQuestion);
	}

	ImportRow as(String club, String town, String team) {
		return new ImportRow(this.line, this.event, club, town, team, this.spokenAs, this.problems);
	}

	ImportRow with(List<RowProblem> problems) {
		return new ImportRow(this.line, this.event, this.club, this.town, this.team, this.spokenAs, problems);
	}

}
