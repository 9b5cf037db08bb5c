package rimebook.cli;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryOrdinals;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.possible.SegmentUnderWay;

/** A file with the ordinals or the marks of one segment. */
record SegmentSheet(CsvFile file, JudgeColumns columns) {

	private static final Pattern WHOLE_PLACE = Pattern.compile("[1-9]\\d{0,3}");

	private static final Pattern MARK = Pattern.compile("[0-5](\\.\\d)?|6(\\.0)?");

	static SegmentSheet of(CsvFile file, PlacementRules.EvenPanel evenPanel) {
		JudgeColumns columns = JudgeColumns.of(file);
		int judges = columns.judges().size();
		if (judges % 2 == 0 && evenPanel == PlacementRules.EvenPanel.REFUSE) {
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

	/** Refuse what cannot be a segment under way. */
	void checkUnderWay() {
		CsvFile.Row last = this.file.rows().get(this.file.rows().size() - 1);
		int judge = this.columns.judges().get(0).get(0);
		if (unfilled().isEmpty()) {
			throw this.file.fault(last.line(), judge,
					"every team has been marked; expected one row at least without figures, for a team still to skate");
		}
		if (this.file.rows().size() > SegmentUnderWay.MOST_TEAMS) {
			throw this.file.fault(this.file.rows().get(SegmentUnderWay.MOST_TEAMS).line(), this.columns.entry(),
					"there are more than " + SegmentUnderWay.MOST_TEAMS + " teams; expected that many at most");
		}
	}

	/**
	 * Refuse ordinals that leave a place out, from which nothing can be said of what
	 * comes.
	 */
	void checkRankings() {
		doubtfulColumns().findFirst().ifPresent((column) -> {
			throw this.file.fault(this.file.headerLine(), column,
					"the ordinals in column '" + this.file.header().get(column)
							+ "' do not rank the teams marked so far; expected 1,2,3 and so on, or 1,1,3");
		});
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
		List<String> doubtful = doubtfulColumns().map((column) -> "'" + this.file.header().get(column) + "'").toList();
		return doubtful.isEmpty() ? List.of()
				: List.of(this.file.name() + ": not a complete ranking of the " + this.file.rows().size()
						+ " entries, taken as it stands: column" + ((doubtful.size() == 1) ? " " : "s ")
						+ String.join(", ", doubtful));
	}

	private Stream<Integer> doubtfulColumns() {
		return this.columns.judges().stream().map((judge) -> judge.get(0)).filter((column) -> !isRanking(column));
	}

	private boolean isRanking(int column) {
		int[] ordinals = this.file.rows()
			.stream()
			.mapToInt((row) -> Integer.parseInt(row.field(column)))
			.sorted()
			.toArray();
		return IntStream.range(0, ordinals.length)
			.allMatch((i) -> ordinals[i] == i + 1 || (i > 0 && ordinals[i] == ordinals[i - 1]));
	}

}
