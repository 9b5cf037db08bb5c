package rimebook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryOrdinals;
import rimebook.tabulation.EvenPanel;

/** A file with the ordinals or the marks of one segment. */
record SegmentSheet(CsvFile file, JudgeColumns columns) {

	private static final Pattern WHOLE_PLACE = Pattern.compile("[1-9]\\d{0,3}");

	private static final Pattern MARK = Pattern.compile("[0-5](\\.\\d)?|6(\\.0)?");

	static SegmentSheet of(CsvFile file, EvenPanel evenPanel) {
		JudgeColumns columns = JudgeColumns.of(file);
		int judges = columns.judges().size();
		if (judges % 2 == 0 && evenPanel == EvenPanel.REFUSE) {
			throw file.fault(file.headerLine(), columns.last(),
					"there are " + judges + " judges; expected an odd number, or option '--even-panel allow'");
		}
		new EntryNames(file, columns.entry()).check();
		return new SegmentSheet(file, columns);
	}

	/** The same without the rows in which the judges' columns are all empty. */
	SegmentSheet filled() {
		List<CsvFile.Row> rows = this.file.rows().stream().filter(this::isFilled).toList();
		return new SegmentSheet(new CsvFile(this.file.name(), this.file.header(), this.file.headerLine(), rows),
				this.columns);
	}

	/** The entries of those rows. */
	List<String> unfilled() {
		return this.file.rows()
			.stream()
			.filter((row) -> !isFilled(row))
			.map((row) -> row.field(this.columns.entry()))
			.toList();
	}

	private boolean isFilled(CsvFile.Row row) {
		return this.columns.judges().stream().flatMap(List::stream).anyMatch((column) -> !row.field(column).isEmpty());
	}

	List<EntryOrdinals> ordinals() {
		return this.file.rows()
			.stream()
			.map((row) -> new EntryOrdinals(row.field(this.columns.entry()),
					this.columns.judges().stream().map((judge) -> ordinal(row, judge.get(0))).toList()))
			.toList();
	}

	private Integer ordinal(CsvFile.Row row, int column) {
		String text = row.field(column);
		if (!WHOLE_PLACE.matcher(text).matches()) {
			throw fault(row, column, "is not an ordinal", "a whole number from 1 to " + EntryOrdinals.HIGHEST);
		}
		return Integer.valueOf(text);
	}

	List<EntryCards> cards() {
		return this.file.rows()
			.stream()
			.map((row) -> EntryCards.skated(row.field(this.columns.entry()),
					this.columns.judges()
						.stream()
						.map((judge) -> new CardMarks(mark(row, judge.get(0)), mark(row, judge.get(1))))
						.toList()))
			.toList();
	}

	private int mark(CsvFile.Row row, int column) {
		String text = row.field(column);
		if (!MARK.matcher(text).matches()) {
			throw fault(row, column, "is not a mark", "0.0 to 6.0 in steps of 0.1");
		}
		String tenths = text.contains(".") ? text.replace(".", "") : text + "0";
		return Integer.parseInt(tenths) * CardMarks.STEP;
	}

	private InputException fault(CsvFile.Row row, int column, String wrong, String expected) {
		return this.file.fault(row.line(), column, "'" + row.field(column) + "' in column '"
				+ this.file.header().get(column) + "' " + wrong + "; expected " + expected);
	}

	/**
	 * Return a note where the ordinals of a judge are not those of a whole field, as
	 * 1,2,3 or 1,1,3 are: part of a field, or a slip.
	 */
	List<String> incompleteRankings() {
		List<String> doubtful = this.columns.judges()
			.stream()
			.map((judge) -> judge.get(0))
			.filter((column) -> !isRanking(column))
			.map((column) -> "'" + this.file.header().get(column) + "'")
			.toList();
		return doubtful.isEmpty() ? List.of()
				: List.of(this.file.name() + ": not a complete ranking of the " + this.file.rows().size()
						+ " entries, taken as it stands: column" + ((doubtful.size() == 1) ? " " : "s ")
						+ String.join(", ", doubtful));
	}

	private boolean isRanking(int column) {
		List<Integer> ordinals = new ArrayList<>(
				this.file.rows().stream().map((row) -> Integer.valueOf(row.field(column))).sorted().toList());
		return IntStream.range(0, ordinals.size())
			.allMatch((i) -> ordinals.indexOf(ordinals.get(i)) + 1 == ordinals.get(i));
	}

}
