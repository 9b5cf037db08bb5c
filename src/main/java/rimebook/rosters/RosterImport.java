package rimebook.rosters;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;

import jakarta.persistence.EntityManager;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.StillOpen;
import rimebook.entries.ClubView;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.tables.TableFile;
import rimebook.tables.TableText;
import rimebook.wording.Sentence;
import rimebook.wording.Series;

/**
 * Rosters of a whole competition from and to a file of comma-separated values. Who is
 * known is known again and shown before anything is written; what {@link #export} writes,
 * an import reads back unchanged.
 */
@Service
@Transactional(readOnly = true)
public class RosterImport {

	/** So many rows at once hold the record for some tenths of a second. */
	public static final int AT_ONCE = 100;

	/** The most rows of a file that are looked at. */
	public static final int MOST_ROWS = RosterFile.MOST_ROWS;

	private final Competitions competitions;

	private final Entries entries;

	private final EventEligibility rules;

	private final RosterWindow window;

	private final StillOpen stillOpen;

	private final Rosters rosters;

	private final Skaters people;

	private final SkaterRepository skaters;

	private final RosterPlaceRepository places;

	private final EntityManager database;

	private final Acts acts;

	private final TransactionTemplate transaction;

	RosterImport(Competitions competitions, Entries entries, EventEligibility rules, RosterWindow window,
			StillOpen stillOpen, Rosters rosters, Skaters people, SkaterRepository skaters,
			RosterPlaceRepository places, EntityManager database, Acts acts, PlatformTransactionManager transactions) {
		this.transaction = new TransactionTemplate(transactions);
		this.competitions = competitions;
		this.entries = entries;
		this.rules = rules;
		this.window = window;
		this.stillOpen = stillOpen;
		this.rosters = rosters;
		this.people = people;
		this.skaters = skaters;
		this.places = places;
		this.database = database;
		this.acts = acts;
	}

	/**
	 * Read an uploaded file as text.
	 * @throws RuleViolationException {@code import-too-large}, {@code import-not-utf8}
	 */
	public String textOf(byte[] upload) {
		return TableText.of(upload);
	}

	/**
	 * Look a file over without writing anything.
	 * @param others the lines of rows of which the person says that it is nobody who is
	 * known
	 * @throws RuleViolationException with a code {@code import-…} if the file cannot be
	 * read as a whole; what is wrong with single rows stands in the preview
	 */
	public Preview preview(CompetitionId id, String csv, Set<Integer> others) {
		TableFile file = RosterFile.read(csv);
		RosterRowCheck check = check(this.competitions.competition(id), file);
		return new Preview(file.rows().stream().map((row) -> check.check(row, others.contains(row.line()))).toList(),
				file.columnsLeftOut());
	}

	/**
	 * Put every row of the file on its roster but those set aside. All are looked over
	 * again first, since the lists may have changed after the preview, and nothing is
	 * written if one is bad. Then a portion is written after the other, so that nobody
	 * who acts meanwhile waits for the record. Should something come between, the
	 * portions before it stay, and the same file goes on from there: who is on the roster
	 * is known again and nothing is written twice.
	 * @param progress is told how many rows are done, after the commit of each portion
	 * @throws RuleViolationException {@code import-rows-bad} if a row that is not set
	 * aside is bad; {@code import-nothing} if no row is left; else as for
	 * {@link #preview}
	 * @throws ConflictException {@code rosters-shut} if files are not taken any more;
	 * {@code rosters-changed} if a team withdrew, or what was known of somebody was
	 * deleted, while rows before were written
	 */
	@Transactional(propagation = Propagation.NOT_SUPPORTED)
	public Outcome apply(CompetitionId id, String csv, Answers answers, IntConsumer progress, Actor actor) {
		TableFile file = RosterFile.read(csv);
		List<RosterRow> rows = Objects.requireNonNull(this.transaction.execute((status) -> rows(id, file, answers)));
		checkRows(rows);
		RosterWriting writing = new RosterWriting(this.skaters, this.places, this.database, this.acts, actor);
		for (int from = 0; from < rows.size(); from += AT_ONCE) {
			List<RosterRow> some = rows.subList(from, Math.min(from + AT_ONCE, rows.size()));
			this.transaction.executeWithoutResult((status) -> write(id, some, writing));
			progress.accept(from + some.size());
		}
		return writing.outcome(file.rows().size() - rows.size());
	}

	private List<RosterRow> rows(CompetitionId id, TableFile file, Answers answers) {
		RosterRowCheck check = check(this.competitions.competition(id), file);
		return file.rows()
			.stream()
			.filter((row) -> !answers.setAside().contains(row.line()))
			.map((row) -> check.check(row, answers.others().contains(row.line())))
			.toList();
	}

	private void write(CompetitionId id, List<RosterRow> some, RosterWriting writing) {
		CompetitionView competition = this.competitions.holding(id);
		checkStillSo(competition, some);
		writing.begin(some);
		some.forEach(writing::write);
		this.database.flush();
		// Each line of the record looks once more for what is to be written: let it find
		// nothing.
		this.database.clear();
	}

	/** Others may have acted since all rows were looked over. */
	private void checkStillSo(CompetitionView competition, List<RosterRow> some) {
		Set<EventId> events = some.stream().map((row) -> row.asked().entry().event()).collect(Collectors.toSet());
		events.forEach(
				(event) -> shut(competition, this.competitions.event(event), this.rules.of(event)).ifPresent((why) -> {
					throw new ConflictException("rosters-shut", why);
				}));
		Set<EntryId> entered = this.entries.ofEvents(events)
			.stream()
			.filter(EntryView::isEntered)
			.map(EntryView::id)
			.collect(Collectors.toSet());
		some.stream().filter((row) -> !entered.contains(row.asked().entry().id())).findFirst().ifPresent((row) -> {
			throw new ConflictException("rosters-changed",
					Sentence.of("rosters.import.withdrawn-meanwhile", row.line(), row.asked().entry().team().name()));
		});
	}

	/** Write the rosters of all teams that take part, whoever left them left out. */
	public String export(CompetitionId id) {
		RosterFile file = new RosterFile();
		List<EventView> events = this.competitions.events(this.competitions.competition(id).id());
		Map<ClubView.Id, String> clubs = this.entries.clubs()
			.stream()
			.collect(Collectors.toMap(ClubView::id, ClubView::name));
		for (EventView event : events) {
			List<EntryView> entered = this.entries.ofEvent(event.id()).stream().filter(EntryView::isEntered).toList();
			Map<EntryId, RosterView> all = this.rosters.of(entered.stream().map(EntryView::id).toList());
			entered.forEach((entry) -> Objects.requireNonNull(all.get(entry.id()))
				.present()
				.stream()
				.filter((place) -> !place.skater().isErased())
				.forEach((place) -> file.add(event.name(), entry, place,
						String.valueOf(clubs.get(place.skater().club())))));
		}
		return file.toString();
	}

	private RosterRowCheck check(CompetitionView competition, TableFile file) {
		List<EventView> events = this.competitions.events(competition.id());
		Map<EventId, RulesView> rules = this.rules.of(events.stream().map(EventView::id).toList());
		Map<EventView, Sentence> shut = new HashMap<>();
		events.forEach((event) -> shut(competition, event, Objects.requireNonNull(rules.get(event.id())))
			.ifPresent((why) -> shut.put(event, why)));
		List<EntryView> entries = this.entries.ofEvents(events.stream().map(EventView::id).toList())
			.stream()
			.filter(EntryView::isEntered)
			.toList();
		Map<EntryId, Set<SkaterView.Id>> there = new HashMap<>();
		this.rosters.of(entries.stream().map(EntryView::id).toList())
			.forEach((entry, roster) -> there.put(entry,
					roster.present().stream().map((place) -> place.skater().id()).collect(Collectors.toSet())));
		return new RosterRowCheck(new RosterRowCheck.Known(events, entries, this.entries.clubs(), shut, there),
				new PeopleIndex(this.people.all()), LocalDate.ofInstant(this.acts.now(), ZoneOffset.UTC), file.width());
	}

	/** A file has no reason, so it is taken only while none is needed. */
	private Optional<Sentence> shut(CompetitionView competition, EventView event, RulesView rules) {
		if (competition.state() == CompetitionState.RUNNING) {
			return Optional.of(Sentence.of("rosters.reason-on-the-day"));
		}
		return this.stillOpen.refusal(event.id())
			.map((refusal) -> refusal.sentence())
			.or(() -> this.window.needsReason(competition, rules.deadline()));
	}

	private static void checkRows(List<RosterRow> rows) {
		List<Integer> bad = rows.stream().filter((row) -> !row.isGood()).map(RosterRow::line).toList();
		if (!bad.isEmpty()) {
			throw TableFile.refusal("import-rows-bad", Sentence.of("rosters.import.rows-bad", bad.size(),
					Series.withCommas(bad.stream().limit(20).toList())));
		}
		if (rows.isEmpty()) {
			throw TableFile.refusal("import-nothing", Sentence.of("rosters.import.nothing"));
		}
	}

	/**
	 * What an import would do if it were accepted now. Nothing has been written.
	 *
	 * @param columnsLeftOut names of columns in the file that have no meaning here
	 */
	public record Preview(List<RosterRow> rows, List<String> columnsLeftOut) {

		public Preview {
			rows = List.copyOf(rows);
			columnsLeftOut = List.copyOf(columnsLeftOut);
		}

		/** The rows that can be taken. */
		public List<RosterRow> good() {
			return this.rows.stream().filter(RosterRow::isGood).toList();
		}

		/** The rows that have to be mended or set aside. */
		public List<RosterRow> bad() {
			return this.rows.stream().filter((row) -> !row.isGood()).toList();
		}

	}

	/**
	 * What an import has done.
	 *
	 * @param people how many were new
	 * @param places how many places were taken or changed
	 * @param changed of how many people something else is known now
	 * @param setAside how many rows were left out on purpose
	 */
	public record Outcome(int people, int places, int changed, int setAside) {
	}

	/**
	 * What the person says about rows, by their lines.
	 *
	 * @param setAside rows that are left out
	 * @param others rows whose person is nobody who is known
	 */
	public record Answers(Set<Integer> setAside, Set<Integer> others) {

		public static final Answers NONE = new Answers(Set.of(), Set.of());

		public Answers {
			setAside = Set.copyOf(setAside);
			others = Set.copyOf(others);
		}

	}

}
