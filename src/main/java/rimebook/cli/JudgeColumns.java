package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Which columns of a segment file are what.
 *
 * @param entry index of the column with the entry
 * @param judges for each judge, in order, the index of the ordinal or of both marks
 * @param hasMarks whether the judges' columns hold marks
 * @param notes what is not used
 */
record JudgeColumns(int entry, List<List<Integer>> judges, boolean hasMarks, List<String> notes) {

	private static final Pattern JUDGE = Pattern.compile("j[1-9]\\d?( first| second)?");

	private static final String EXPECTED = "entry,J1,...,Jn with ordinals or entry,J1 first,J1 second,... with marks";

	/**
	 * Understand a header.
	 * @throws InputException where there is no judge, one is missing or ordinals and
	 * marks are mixed
	 */
	static JudgeColumns of(CsvFile file) {
		HeaderColumns columns = new HeaderColumns(file, JUDGE, EXPECTED);
		boolean hasMarks = columns.hasAny(columnsOf(1, true));
		List<List<String>> judges = new ArrayList<>();
		List<String> next = columnsOf(1, hasMarks);
		while (columns.hasAll(next)) {
			judges.add(next);
			next = columnsOf(judges.size() + 1, hasMarks);
		}
		columns.nothingBeside(judges.stream().flatMap(List::stream).toList(), next);
		if (judges.isEmpty()) {
			throw columns.fault(file.header().size() - 1, "there is no column of a judge");
		}
		return new JudgeColumns(columns.entry(), judges.stream().map(columns::indexes).toList(), hasMarks,
				columns.notes());
	}

	private static List<String> columnsOf(int judge, boolean marks) {
		return marks ? List.of("j" + judge + " first", "j" + judge + " second") : List.of("j" + judge);
	}

	/** Index of the last judge's last column, where too many or too few judges show. */
	int last() {
		List<Integer> judge = this.judges.get(this.judges.size() - 1);
		return judge.get(judge.size() - 1);
	}

}
