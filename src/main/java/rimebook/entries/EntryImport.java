package rimebook.entries;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tables.TableText;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Entries of a whole competition from and to a file of comma-separated values with the
 * header {@code event,club,town,team,spoken_as}. What {@link #export} writes, an import
 * reads back unchanged.
 */
@Service
@Transactional(readOnly = true)
public class EntryImport {

	/** The largest file that is looked at: 1 MiB. */
	public static final int LARGEST = TableText.LARGEST;

	private final Competitions competitions;

	private final Entries entries;

	private final EntryBook book;

	private final TeamRegister register;

	private final EntryWindow window;

	EntryImport(Competitions competitions, Entries entries, EntryBook book, TeamRegister register, EntryWindow window) {
		this.competitions = competitions;
		this.entries = entries;
		this.book = book;
		this.register = register;
		this.window = window;
	}

	/**
	 * Read an uploaded file as text, in UTF-8 or, where its first mark says so, in
	 * UTF-16.
	 * @throws RuleViolationException {@code import-too-large}, {@code import-not-utf8}
	 */
	public String textOf(byte[] upload) {
		return TableText.of(upload);
	}

	/**
	 * Look a file over without writing anything.
	 * @param others the lines of rows of which the person says that their club or team is
	 * none of those it is near to
	 * @throws ConflictException {@code entries-not-open}
	 * @throws RuleViolationException with a code {@code import-…} if the file cannot be
	 * read as a whole; what is wrong with single rows stands in the preview
	 * @throws NotFoundException if there is no such competition
	 */
	public Preview preview(CompetitionId id, String csv, Set<Integer> others) {
		this.window.checkOpen(this.competitions.competition(id));
		ImportFile file = ImportFile.read(csv);
		RowCheck check = check(id);
		return new Preview(checked(check, file.rows(), others), file.columnsLeftOut());
	}

	/**
	 * Enter every row of the file but those set aside, all or none. The rows are looked
	 * over again, since the lists may have changed after the preview.
	 * @throws ConflictException {@code entries-not-open}
	 * @throws RuleViolationException {@code import-rows-bad} if a row that is not set
	 * aside is bad; {@code import-nothing} if no row is left; else as for
	 * {@link #preview}
	 */
	@Transactional
	public Outcome apply(CompetitionId id, String csv, Answers answers, Actor actor) {
		CompetitionView competition = this.competitions.holding(id);
		this.window.checkOpen(competition);
		List<Row> all = ImportFile.read(csv).rows();
		RowCheck check = check(id);
		List<Row> rows = checked(check, all.stream().filter((row) -> !answers.setAside().contains(row.line())).toList(),
				answers.others());
		checkRows(rows);
		rows.forEach((row) -> this.book.enter(competition, order(check.event(row.event()), row), actor));
		return new Outcome(rows.size(), all.size() - rows.size());
	}

	/**
	 * Write the entries of all events that have not been withdrawn, events in their
	 * order, teams by name.
	 * @throws NotFoundException if there is no such competition
	 */
	public String export(CompetitionId id) {
		ExportFile file = new ExportFile();
		this.competitions.events(this.competitions.competition(id).id())
			.forEach((event) -> this.entries.ofEvent(event.id())
				.stream()
				.filter(EntryView::isEntered)
				.forEach((entry) -> file.add(event, entry.team())));
		return file.toString();
	}

	private static List<Row> checked(RowCheck check, List<Row> rows, Set<Integer> others) {
		return rows.stream().map((row) -> check.check(row, others.contains(row.line()))).toList();
	}

	private RowCheck check(CompetitionId id) {
		List<EventView> events = this.competitions.events(id);
		List<EntryView> entries = events.stream()
			.flatMap((event) -> this.entries.ofEvent(event.id()).stream())
			.toList();
		return new RowCheck(events, this.register.known(), entries, shut(events));
	}

	private Map<EventId, Sentence> shut(List<EventView> events) {
		Map<EventId, Sentence> shut = new HashMap<>();
		events.forEach((event) -> this.window.importRefusal(event.id()).ifPresent((why) -> shut.put(event.id(), why)));
		return shut;
	}

	private static void checkRows(List<Row> rows) {
		Sentence bad = Series
			.withCommas(rows.stream().filter((row) -> !row.isGood()).map((row) -> row.line()).toList());
		if (!bad.isEmpty()) {
			throw ImportFile.refusal("import-rows-bad", Sentence.of("entries.import.rows-bad", bad));
		}
		if (rows.isEmpty()) {
			throw ImportFile.refusal("import-nothing", Sentence.of("entries.import.nothing"));
		}
	}

	private static EnterTeam order(EventView event, Row row) {
		return new EnterTeam(event.id(), row.names().club(), row.names().town(), row.names().team(),
				row.names().spokenAs(), "");
	}

	/**
	 * One row of an import file as it was read.
	 *
	 * @param line the line on which the row begins, from 1, the header counted
	 * @param problems what is wrong with it; empty when it can be entered
	 */
	public record Row(int line, String event, Names names, List<Problem> problems) {

		public Row {
			problems = List.copyOf(problems);
		}

		/** Tell whether the row can be entered as it is. */
		public boolean isGood() {
			return this.problems.isEmpty();
		}

		/** Tell whether only the person's word is missing for it to be entered. */
		public boolean isAsked() {
			return !isGood() && this.problems.stream().allMatch(Problem::isQuestion);
		}

		Row as(String club, String town, String team) {
			return new Row(this.line, this.event, new Names(club, town, team, this.names.spokenAs()), this.problems);
		}

		Row with(List<Problem> problems) {
			return new Row(this.line, this.event, this.names, problems);
		}

		/** The names of a team as they stand in a row. */
		public record Names(String club, String town, String team, String spokenAs) {
		}

	}

	/**
	 * What is wrong in one row of an import file.
	 *
	 * @param column the column's name, or "row" for the whole of it
	 * @param wrong what is wrong
	 * @param expected what would be right
	 * @param isQuestion whether nothing is wrong if the person says so
	 */
	public record Problem(String column, Sentence wrong, Sentence expected, boolean isQuestion) {

		/** Something that is wrong whatever the person says. */
		public Problem(String column, Sentence wrong, Sentence expected) {
			this(column, wrong, expected, false);
		}

	}

	/**
	 * What an import would do if it were accepted now. Nothing has been written.
	 *
	 * @param rows every row of the file, in its order
	 * @param columnsLeftOut names of columns in the file that have no meaning here
	 */
	public record Preview(List<EntryImport.Row> rows, List<String> columnsLeftOut) {

		public Preview {
			rows = List.copyOf(rows);
			columnsLeftOut = List.copyOf(columnsLeftOut);
		}

		/** The rows that can be entered. */
		public List<EntryImport.Row> good() {
			return this.rows.stream().filter(EntryImport.Row::isGood).toList();
		}

		/** The rows that have to be mended or set aside. */
		public List<EntryImport.Row> bad() {
			return this.rows.stream().filter((row) -> !row.isGood()).toList();
		}

	}

	/**
	 * What an import has done.
	 *
	 * @param entered how many teams were entered
	 * @param setAside how many rows were left out on purpose
	 */
	public record Outcome(int entered, int setAside) {

	}

	/**
	 * What the person says about rows of an import file, by their lines.
	 *
	 * @param setAside rows that are left out
	 * @param others rows whose club or team is none of those it is near to
	 */
	public record Answers(Set<Integer> setAside, Set<Integer> others) {

		public static final Answers NONE = new Answers(Set.of(), Set.of());

		public Answers {
			setAside = Set.copyOf(setAside);
			others = Set.copyOf(others);
		}

	}

}
