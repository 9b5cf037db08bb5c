package rimebook.entries;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

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
	public ImportPreview preview(CompetitionId id, String csv, Set<Integer> others) {
		this.window.checkOpen(this.competitions.competition(id));
		ImportFile file = ImportFile.read(csv);
		RowCheck check = check(id);
		return new ImportPreview(checked(check, file.rows(), others), file.columnsLeftOut());
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
	public ImportOutcome apply(CompetitionId id, String csv, RowAnswers answers, Actor actor) {
		CompetitionView competition = this.competitions.holding(id);
		this.window.checkOpen(competition);
		List<ImportRow> all = ImportFile.read(csv).rows();
		RowCheck check = check(id);
		List<ImportRow> rows = checked(check,
				all.stream().filter((row) -> !answers.setAside().contains(row.line())).toList(), answers.others());
		checkRows(rows);
		rows.forEach((row) -> this.book.enter(competition, order(check.event(row.event()), row), actor));
		return new ImportOutcome(rows.size(), all.size() - rows.size());
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

	private static List<ImportRow> checked(RowCheck check, List<ImportRow> rows, Set<Integer> others) {
		return rows.stream().map((row) -> check.check(row, others.contains(row.line()))).toList();
	}

	private RowCheck check(CompetitionId id) {
		List<EventView> events = this.competitions.events(id);
		List<EntryView> entries = events.stream()
			.flatMap((event) -> this.entries.ofEvent(event.id()).stream())
			.toList();
		return new RowCheck(events, this.register.known(), entries, shut(events));
	}

	private Map<EventId, String> shut(List<EventView> events) {
		Map<EventId, String> shut = new HashMap<>();
		events.forEach((event) -> this.window.refusal(event.id()).ifPresent((why) -> shut.put(event.id(), why)));
		return shut;
	}

	private static void checkRows(List<ImportRow> rows) {
		String bad = rows.stream()
			.filter((row) -> !row.isGood())
			.map((row) -> String.valueOf(row.line()))
			.collect(Collectors.joining(", "));
		if (!bad.isEmpty()) {
			throw ImportFile.refusal("import-rows-bad",
					"Nothing was entered. Mend these lines or set them aside: " + bad + ".");
		}
		if (rows.isEmpty()) {
			throw ImportFile.refusal("import-nothing", "Every row is set aside, so there is nothing to enter.");
		}
	}

	private static EnterTeam order(EventView event, ImportRow row) {
		return new EnterTeam(event.id(), row.club(), row.town(), row.team(), row.spokenAs(), "");
	}

}
