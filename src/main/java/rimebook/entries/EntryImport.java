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

	private final EntryWindow window;

	EntryImport(Competitions competitions, Entries entries, EntryBook book, EntryWindow window) {
		this.competitions = competitions;
		this.entries = entries;
		this.book = book;
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
	 * @throws ConflictException {@code entries-not-open}
	 * @throws RuleViolationException with a code {@code import-…} if the file cannot be
	 * read as a whole; what is wrong with single rows stands in the preview
	 * @throws NotFoundException if there is no such competition
	 */
	public ImportPreview preview(CompetitionId id, String csv) {
		this.window.checkOpen(this.competitions.competition(id));
		ImportFile file = ImportFile.read(csv);
		RowCheck check = check(id);
		return new ImportPreview(file.rows().stream().map(check::check).toList(), file.columnsLeftOut());
	}

	/**
	 * Enter every row of the file but those set aside, all or none. The rows are looked
	 * over again, since the lists may have changed after the preview.
	 * @param linesSetAside the lines of the rows to leave out
	 * @throws ConflictException {@code entries-not-open}
	 * @throws RuleViolationException {@code import-rows-bad} if a row that is not set
	 * aside is bad; {@code import-nothing} if no row is left; else as for
	 * {@link #preview}
	 */
	@Transactional
	public ImportOutcome apply(CompetitionId id, String csv, Set<Integer> linesSetAside, Actor actor) {
		CompetitionView competition = this.competitions.holding(id);
		this.window.checkOpen(competition);
		List<ImportRow> all = ImportFile.read(csv).rows();
		RowCheck check = check(id);
		List<ImportRow> rows = all.stream()
			.filter((row) -> !linesSetAside.contains(row.line()))
			.map(check::check)
			.toList();
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

	private RowCheck check(CompetitionId id) {
		List<EventView> events = this.competitions.events(id);
		List<EntryView> entries = events.stream()
			.flatMap((event) -> this.entries.ofEvent(event.id()).stream())
			.toList();
		return new RowCheck(events, this.entries.clubs(), entries, shut(events));
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
