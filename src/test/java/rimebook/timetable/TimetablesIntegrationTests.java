package rimebook.timetable;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionId;
import rimebook.entries.EntryView;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.timetable.plan.Block;
import rimebook.timetable.plan.Differences;
import rimebook.timetable.plan.Estimate;
import rimebook.timetable.plan.Laid;
import rimebook.timetable.plan.Plan;
import rimebook.timetable.plan.Programmed;
import rimebook.timetable.plan.Skated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class TimetablesIntegrationTests {

	private static final Actor REFEREE = SmallCompetition.REFEREE;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Timetables timetables;

	@Autowired
	private TimetableVersions versions;

	@Autowired
	private TimetableDay today;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private CompetitionId id;

	@BeforeEach
	void aCompetitionRuns() {
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.id = this.day.competition().id();
	}

	@Test
	void aFirstPlanHasEverySegmentAndNoneIsMissing() {
		assertThat(this.timetables.plan(this.id).plan().isEmpty()).isTrue();
		PlanView filled = this.timetables.fill(this.id, 0, REFEREE);
		assertThat(filled.plan().blocks()).extracting(Block::kind)
			.contains(Block.Kind.DOORS, Block.Kind.MEETING, Block.Kind.SEGMENT, Block.Kind.CEREMONY);
		assertThat(filled.plan().blocks().stream().filter((block) -> block.kind() == Block.Kind.SEGMENT))
			.hasSameSizeAs(this.day.event().segments());
		assertThat(filled.laid().warnings()).noneMatch((warning) -> warning.block() == null);
		assertThat(this.timetables.plan(this.id)).usingRecursiveComparison()
			.ignoringFields("last.at")
			.isEqualTo(filled);
		assertThat(line("timetable.filled")).startsWith("|" + filled.plan().blocks().size() + " blocks on ");
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.timetables.fill(this.id, filled.number(), REFEREE))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("timetable-not-empty"));
	}

	@Test
	void everyActIsOnTheRecordAndIsTakenBack() {
		PlanView filled = this.timetables.fill(this.id, 0, REFEREE);
		Plan.Place place = filled.plan().sheets().get(0).place();
		PlanView added = this.timetables.add(this.id, 1, lunch(place), 0, REFEREE);
		UUID lunch = added.plan().blocks().get(0).id();
		assertThat(line("timetable.block-added")).startsWith("|Lunch: ").contains("30 min");
		PlanView moved = this.timetables.move(this.id, 2, lunch, 1, REFEREE);
		assertThat(moved.plan().on(place).get(1).id()).isEqualTo(lunch);
		assertThat(line("timetable.block-moved")).contains("08:00").contains("08:30");
		this.timetables.remove(this.id, 3, lunch, REFEREE);
		assertThat(line("timetable.block-removed")).startsWith("Lunch: ").endsWith("|");
		assertThat(this.timetables.takeBack(this.id, 4, REFEREE).plan()).isEqualTo(moved.plan());
		assertThat(this.timetables.takeBack(this.id, 5, REFEREE).plan()).isEqualTo(added.plan());
		assertThat(this.timetables.takeBack(this.id, 6, REFEREE).plan()).isEqualTo(filled.plan());
		assertThat(this.timetables.takeBack(this.id, 7, REFEREE).plan().isEmpty()).isTrue();
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.timetables.takeBack(this.id, 8, REFEREE));
	}

	@Test
	void nobodyOverwritesWhatSomebodyElseChanged() {
		PlanView filled = this.timetables.fill(this.id, 0, REFEREE);
		Plan.Place place = filled.plan().sheets().get(0).place();
		this.timetables.add(this.id, 1, lunch(place), 0, SmallCompetition.SECRETARY);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.timetables.add(this.id, 1, lunch(place), 0, REFEREE))
			.satisfies((refused) -> assertThat(refused.code()).isEqualTo("stale-version"));
	}

	@Test
	void iceIsAddedAndGivenUpWhileNothingIsOnIt() {
		PlanView empty = this.timetables.plan(this.id);
		Plan.Place main = empty.plan().sheets().get(0).place();
		SheetDraft side = new SheetDraft(main.day(), "Side ice", LocalTime.of(7, 0), LocalTime.of(22, 0),
				List.of(LocalTime.of(12, 0)));
		PlanView two = this.timetables.set(this.id, 0, side, REFEREE);
		assertThat(two.plan().surfaces()).containsExactly("Main ice", "Side ice");
		assertThat(line("timetable.sheet-added")).endsWith("Side ice: 07:00 to 22:00, resurfaced at 12:00");
		Plan.Place place = new Plan.Place(main.day(), 1);
		this.timetables.add(this.id, 1, lunch(place), 0, REFEREE);
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.timetables.remove(this.id, 2, place, REFEREE));
		SheetDraft elsewhere = new SheetDraft(main.day().plusDays(90), "Side ice", LocalTime.NOON, LocalTime.MIDNIGHT,
				List.of());
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.timetables.set(this.id, 2, elsewhere, REFEREE));
	}

	@Test
	void aVersionStaysAsItWasPublishedAndTheNextTellsWhatIsDifferent() {
		PlanView filled = this.timetables.fill(this.id, 0, REFEREE);
		TimetableVersion first = this.versions.publish(this.id, 1, "", REFEREE);
		assertThat(this.versions.latest(this.id)).contains(first);
		assertThat(this.versions.unpublished(filled)).isEmpty();
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.versions.publish(this.id, 1, "", REFEREE));
		PlanView later = this.timetables.add(this.id, 1, lunch(filled.plan().sheets().get(0).place()), 0, REFEREE);
		assertThat(this.versions.unpublished(later)).extracting(Differences.Difference::what)
			.contains(Differences.What.ADDED, Differences.What.TIME);
		TimetableVersion second = this.versions.publish(this.id, 2, "The bus is late", REFEREE);
		assertThat(second.number()).isEqualTo(2);
		assertThat(this.versions.version(this.id, 1)).contains(first);
		assertThat(this.versions.unpublished(later)).isEmpty();
		assertThat(this.versions.differences(second))
			.isEqualTo(Differences.between(first.timetable(), second.timetable()))
			.isNotEmpty();
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql("update timetable_version set note = 'x'").update());
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql("delete from timetable_plan").update());
	}

	@Test
	void theDrawPutsTeamsIntoTheirOrderAndIsADifferenceToWhatWasPublished() {
		this.timetables.fill(this.id, 0, REFEREE);
		this.versions.publish(this.id, 1, "", REFEREE);
		this.day.draw(1);
		PlanView drawn = this.timetables.plan(this.id);
		assertThat(drawn.programme().segments().get(0).drawn()).isTrue();
		assertThat(skated(drawn).teams()).extracting((slot) -> slot.team().number()).containsExactly(1, 2, 3);
	}

	@Test
	void theIceMovesWhatIsExpected() {
		this.timetables.fill(this.id, 0, REFEREE);
		this.day.open(1);
		TimetableVersion version = heldToday(this.versions.publish(this.id, 1, "", REFEREE));
		assertThat(this.today.now(version).estimate().expected()).isNotEmpty();
		Programmed.Item first = version.timetable()
			.items()
			.stream()
			.filter(Programmed.Item::isSkated)
			.findFirst()
			.orElseThrow();
		this.day.skateNext(1);
		this.day.callNext(1);
		TimetableDay.Day now = this.today.now(version);
		UUID segment = first.of().segment();
		List<UUID> teams = first.teams().stream().map((line) -> line.team().entry()).toList();
		assertThat(teams).extracting((team) -> now.state(segment, team))
			.containsExactly(Skated.State.OVER, Skated.State.ON_ICE, Skated.State.WAITING);
		Instant called = now.called(segment, teams.get(1));
		Estimate.Expected last = now.estimate().of(first.id(), teams.get(2)).orElseThrow();
		assertThat(last.at()).isEqualTo(called.plusSeconds(first.teams().get(1).seconds()));
		assertThat(now.estimate().of(first.id(), teams.get(1))).isEmpty();
	}

	@Test
	void theRefereePlansWithFormsAndEverybodyReadsWhatIsPublished() {
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String desk = "/desk/timetable/" + this.id;
		String open = "/follow/" + this.day.competition().slug() + "/timetable";
		assertThat(referee.open(open).text()).contains("No timetable is published yet.");
		Visitor.Page filled = referee.open(desk).press("form[action$=/fill]");
		assertThat(filled.text()).contains("A first plan is made.", "Opening of the doors",
				"Nothing is published yet.");
		assertThat(referee.open(open).text()).contains("No timetable is published yet.");
		Visitor.Page block = referee.open(desk + "/blocks/new");
		Visitor.Page wrong = block.submit("form.sheet", Map.of("kind", "BREAK", "minutes", "9999", "anchor", "soon"));
		assertThat(wrong.status()).isEqualTo(422);
		assertThat(wrong.text()).contains("Type a time of the day such as 14:30.");
		Visitor.Page added = block.submit("form.sheet",
				Map.of("kind", "BREAK", "title", "Lunch & talk", "minutes", "20", "segment", ""));
		assertThat(added.text()).contains("The block is in the plan", "Lunch & talk");
		assertThat(added.submit("form[action$=/publish]", Map.of("note", "")).text()).contains("Version 1");
		Visitor.Page published = new Visitor(port()).open(open);
		assertThat(published.text()).contains("Lunch & talk", this.day.entries().get(0).team().name(), "Version 1")
			.doesNotContain("Changed since");
		assertThat(new Visitor(port()).open(open + "?lang=fi").text()).contains("Ovet avataan", "Tuomarikokous");
		assertThat(new Visitor(port()).open(open + "?lang=fr").text()).contains("Ouverture des portes");
		Visitor.Page moved = referee.open(desk).press("form[action$=/move]:has(input[value=1])");
		assertThat(moved.text()).contains("The plan says otherwise");
		moved.submit("form[action$=/publish]", Map.of("note", "The bus is late."));
		assertThat(new Visitor(port()).open(open).text()).contains("Changed since the version before",
				"The bus is late.", "08:15 instead of 08:00");
		assertThat(Crew.visitor(this.context, Role.ANNOUNCER).open(desk).document().select("form[action*=timetable]"))
			.isEmpty();
		assertThat(Crew.visitor(this.context, Role.ACCOUNTANT).open(desk).status()).isEqualTo(200);
	}

	@Test
	void aCalendarMovesWhatItHasWithEachVersion() {
		PlanView filled = this.timetables.fill(this.id, 0, REFEREE);
		this.versions.publish(this.id, 1, "", REFEREE);
		String open = "/follow/" + this.day.competition().slug() + "/timetable";
		EntryView team = this.day.entries().get(0);
		String all = calendar(open + ".ics");
		String own = calendar(open + "/team/" + team.id() + ".ics");
		assertThat(events(own)).hasSize(this.day.event().segments().size())
			.allMatch((event) -> event.contains("SUMMARY:" + team.team().name()));
		assertThat(events(all)).hasSize(filled.plan().blocks().size())
			.allMatch(
					(event) -> event.contains("SEQUENCE:1\r\n") && event.matches("(?s).*DTSTART:\\d{8}T\\d{6}Z\r\n.*"));
		Programmed.Item first = this.versions.latest(this.id).orElseThrow().timetable().items().get(0);
		assertThat(all).contains("DTSTART:" + first.begins().toString().replaceAll("[-:]", ""));
		this.timetables.move(this.id, 1, filled.plan().blocks().get(0).id(), 1, REFEREE);
		this.versions.publish(this.id, 2, "", REFEREE);
		String moved = calendar(open + ".ics");
		assertThat(lines(moved, "UID:")).containsExactlyInAnyOrderElementsOf(lines(all, "UID:"))
			.doesNotHaveDuplicates();
		assertThat(lines(moved, "SEQUENCE:")).containsOnly("SEQUENCE:2");
		assertThat(lines(calendar(open + "/event/" + this.day.event().slug() + ".ics"), "UID:"))
			.isSubsetOf(lines(all, "UID:"))
			.hasSizeGreaterThanOrEqualTo(this.day.event().segments().size());
		assertThat(new Visitor(port()).open(open + "/team/" + UUID.randomUUID() + ".ics").status()).isEqualTo(404);
	}

	private int port() {
		return Integer.parseInt(this.context.getEnvironment().getRequiredProperty("local.server.port"));
	}

	private String calendar(String path) {
		HttpResponse<byte[]> answer = new Visitor(port()).bytes(path);
		assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/calendar;charset=UTF-8");
		return new String(answer.body(), StandardCharsets.UTF_8).replace("\r\n ", "");
	}

	private static List<String> events(String calendar) {
		return List.of(calendar.split("BEGIN:VEVENT")).stream().skip(1).toList();
	}

	private static List<String> lines(String calendar, String name) {
		return calendar.lines().filter((line) -> line.startsWith(name)).toList();
	}

	/**
	 * The same with its first day today, whenever the test runs, and all of it to come.
	 */
	private static TimetableVersion heldToday(TimetableVersion version) {
		ZoneId zone = ZoneId.of(version.timetable().zone());
		Programmed.Day first = version.timetable().days().get(0);
		LocalDate today = LocalDate.now(zone);
		Duration later = Duration.between(first.day().atStartOfDay(zone).toInstant(),
				today.atStartOfDay(zone).toInstant());
		List<Programmed.Ice> ice = first.ice()
			.stream()
			.map((one) -> new Programmed.Ice(one.surface(),
					one.items().stream().map((item) -> put(item, later)).toList()))
			.toList();
		return new TimetableVersion(version.competition(), version.number(), version.plan(), version.act(),
				new Programmed(version.timetable().zone(), List.of(new Programmed.Day(today, ice))));
	}

	private static Programmed.Item put(Programmed.Item item, Duration later) {
		return new Programmed.Item(item.id(), item.kind(), item.title(), item.of(), item.begins().plus(later),
				item.ends().plus(later), item.gap(), item.aside(),
				item.lines()
					.stream()
					.map((line) -> new Programmed.Line(line.kind(), line.begins().plus(later), line.ends().plus(later),
							line.team()))
					.toList());
	}

	private static Laid.LaidBlock skated(PlanView view) {
		return view.laid()
			.blocks()
			.stream()
			.filter((laid) -> laid.block().kind() == Block.Kind.SEGMENT)
			.findFirst()
			.orElseThrow();
	}

	private static BlockDraft lunch(Plan.Place place) {
		return new BlockDraft(place, Block.Kind.BREAK, "Lunch", 1800, Block.Timing.NEXT, null);
	}

	/** What was before and what is after, in the newest line of a kind about this day. */
	private String line(String action) {
		Map<String, Object> line = this.database
			.sql("select before_text, after_text from record_line where action = ? and subject_id = ? "
					+ "order by number desc fetch first 1 row only")
			.param(action)
			.param(this.id.toString())
			.query()
			.singleRow();
		return line.get("before_text") + "|" + line.get("after_text");
	}

}
