package rimebook.timetable;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionId;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
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
import rimebook.timetable.plan.PlanRules;
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
	private MeasuredMarking marking;

	@Autowired
	private TimetableLetters letters;

	@Autowired
	private Entries entries;

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
		PlanView.Step step = this.timetables.since(this.id, 1).get(0);
		assertThat(step.act().by()).isEqualTo(SmallCompetition.SECRETARY.name());
		assertThat(step.changes()).singleElement()
			.satisfies((change) -> assertThat(change.before() + "|" + change.after()).startsWith("|Lunch: "));
		assertThat(this.timetables.since(this.id, 2)).isEmpty();
	}

	@Test
	void whoComesLaterSeesWhatChangedAndDecides() {
		PlanView filled = this.timetables.fill(this.id, 0, REFEREE);
		Plan.Place place = filled.plan().sheets().get(0).place();
		PlanView lunch = this.timetables.add(this.id, 1, lunch(place), 0, REFEREE);
		UUID block = lunch.plan().blocks().get(0).id();
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		Visitor.Page form = referee.open("/desk/timetable/" + this.id + "/blocks/" + block);
		this.timetables.move(this.id, 2, block, 1, SmallCompetition.SECRETARY);
		Visitor.Page refused = form.submit("form.sheet", Map.of("minutes", "40"));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.text()).contains("Somebody else changed the plan meanwhile", "a block was moved, by ",
				"Lunch: ");
		assertThat(refused.document().select("#minutes").val()).isEqualTo("40");
		Visitor.Page saved = refused.submit("form.sheet", Map.of());
		assertThat(saved.text()).contains("The block is changed").doesNotContain("changed the plan meanwhile");
		Visitor.Page again = referee.open("/desk/timetable/" + this.id + "/blocks/" + block);
		this.timetables.remove(this.id, 4, block, SmallCompetition.SECRETARY);
		Visitor.Page gone = again.submit("form.sheet", Map.of("minutes", "50"));
		assertThat(gone.text()).contains("a block was removed, by ");
		assertThat(gone.submit("form.sheet", Map.of()).text()).contains("The block is in the plan");
		assertThat(this.timetables.plan(this.id).plan().blocks()).anyMatch((one) -> one.seconds() == 3000);
	}

	@Test
	void thePlanTakesWhatWasMeasuredAndGivesItBack() {
		this.timetables.fill(this.id, 0, REFEREE);
		this.versions.publish(this.id, 1, "", REFEREE);
		assertThat(this.marking.of(this.id)).singleElement().satisfies((one) -> {
			assertThat(one.counts()).isFalse();
			assertThat(one.seconds()).isEqualTo(60).isEqualTo(one.planned());
		});
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.marking.take(this.id, 1, false, REFEREE));
		PlanView taken = this.timetables.measured(this.id, 1, new MeasuredMarking.Measure(false, 4, 95, 60), REFEREE);
		assertThat(taken.plan().rules().team().markingPlacement()).isEqualTo(95);
		assertThat(taken.plan().rules().team().markingPoints()).isEqualTo(120);
		assertThat(line("timetable.rules-changed")).contains("marks 60 s").contains("marks 95 s");
		assertThat(this.timetables.takeBack(this.id, 2, REFEREE).plan().rules()).isEqualTo(PlanRules.USUAL);
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
	void whatWasCancelledSinceIsExpectedByNobody() {
		this.timetables.fill(this.id, 0, REFEREE);
		TimetableVersion version = heldToday(this.versions.publish(this.id, 1, "", REFEREE));
		UUID segment = this.day.segment(1).value();
		assertThat(this.today.now(version).of(segment)).hasSize(3);
		Cancellations cancellations = this.context.getBean(Cancellations.class);
		cancellations.cancel(this.day.segment(1), "The ice is soft", REFEREE);
		TimetableDay.Day now = this.today.now(version);
		assertThat(now.cancelled()).containsExactly(segment);
		assertThat(now.of(segment)).isEmpty();
		assertThat(now.state(segment, this.day.entries().get(0).id().value())).isEqualTo(Skated.State.GONE);
		assertThat(new Visitor(port()).open("/follow/" + this.day.competition().slug() + "/timetable").text())
			.contains("Cancelled", "does not skate");
		assertThat(cancelled(version)).containsExactly(Block.Kind.SEGMENT);
		String board = "/follow/" + this.day.competition().slug() + "/board/timetable";
		assertThat(new Visitor(port()).open(board).text()).contains("Ceremony: ");
		cancellations.cancel(this.day.event().id(), "The ice is soft", REFEREE);
		assertThat(cancelled(version)).contains(Block.Kind.CEREMONY);
		assertThat(new Visitor(port()).open(board).text()).doesNotContain("Ceremony: ");
		cancellations.bringBack(this.day.event().id(), REFEREE);
		cancellations.bringBack(this.day.segment(1), REFEREE);
		assertThat(this.today.now(version).of(segment)).hasSize(3);
		assertThat(cancelled(version)).isEmpty();
	}

	private List<Block.Kind> cancelled(TimetableVersion version) {
		TimetableDay.Day now = this.today.now(version);
		return version.timetable().items().stream().filter(now::isCancelled).map(Programmed.Item::kind).toList();
	}

	@Test
	void whoWasPassedOverComesAfterTheOthersWhereverTheDayIsTold() {
		this.timetables.fill(this.id, 0, REFEREE);
		this.day.open(1);
		TimetableVersion version = heldToday(this.versions.publish(this.id, 1, "", REFEREE));
		List<PerformanceView> order = this.day.performances(1);
		this.context.getBean(SegmentRun.class)
			.call(order.get(1).id(), order.get(1).version(), "A skate broke", REFEREE);
		List<UUID> teams = order.stream().map((one) -> one.entry().value()).toList();
		assertThat(this.today.now(version).of(this.day.segment(1).value())).extracting(Estimate.Expected::entry)
			.containsExactly(teams.get(2), teams.get(0));
		String slug = this.day.competition().slug();
		List<String> next = new Visitor(port()).open("/follow/" + slug + "/board")
			.document()
			.select("ol.next li")
			.eachText();
		assertThat(next).hasSize(2);
		assertThat(next.get(0)).contains(name(teams.get(2)));
		assertThat(next.get(1)).contains(name(teams.get(0)));
		assertThat(line("performance.called-out-of-order", order.get(1).id().value())).isNotBlank();
	}

	private String name(UUID entry) {
		return this.day.entries()
			.stream()
			.filter((one) -> one.id().value().equals(entry))
			.map((one) -> one.team().name())
			.findFirst()
			.orElseThrow();
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
	void clubsHearOfTheirTimesByLetterAndThatIsOnTheRecord() {
		PlanView filled = this.timetables.fill(this.id, 0, REFEREE);
		this.versions.publish(this.id, 1, "", REFEREE);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String letters = "/desk/timetable/" + this.id + "/letters";
		assertThat(referee.open(letters).text()).contains("The timetable was not published twice yet");
		this.timetables.add(this.id, 1, lunch(filled.plan().sheets().get(0).place()), 0, REFEREE);
		this.versions.publish(this.id, 2, "The bus is late.", REFEREE);
		EntryView team = this.day.entries().get(0);
		Visitor.Page page = referee.open(letters);
		assertThat(page.text()).contains(team.team().club().name(), team.team().name() + ": ");
		assertThat(page.submit("form.sheet", Map.of("club", "Nobody")).text())
			.contains("No team has other times between these versions.");
		HttpResponse<byte[]> sheets = referee.bytes(letters + "/sheets.pdf?from=1&to=2&languages=en,fi");
		assertThat(sheets.headers().firstValue("Content-Type")).hasValue("application/pdf");
		assertThat(referee.bytes(letters + "/sheets.pdf?from=1&to=9").statusCode()).isEqualTo(404);
		assertThat(referee.bytes(letters + "/sheets.pdf?from=1&to=2&languages=xx").statusCode()).isEqualTo(422);
		this.letters.note(new TimetableLetters.Between(this.id, 1, 2), List.of(Locale.ENGLISH), "", REFEREE);
		long clubs = this.day.entries().stream().map((entry) -> entry.team().club().name()).distinct().count();
		assertThat(line("timetable.letters-printed"))
			.isEqualTo("|from version 1 to 2, to " + clubs + " clubs, in English");
	}

	@Test
	void aDayIsOnPaperForEverybodyInTheirLanguage() {
		this.timetables.fill(this.id, 0, REFEREE);
		String open = "/follow/" + this.day.competition().slug() + "/timetable/"
				+ this.day.competition().facts().firstDay();
		Visitor anybody = new Visitor(port());
		assertThat(anybody.bytes(open + ".pdf").statusCode()).isEqualTo(404);
		TimetableVersion version = this.versions.publish(this.id, 1, "", REFEREE);
		byte[] finnish = anybody.bytes(open + ".pdf?lang=fi").body();
		assertThat(finnish).startsWith("%PDF".getBytes(StandardCharsets.UTF_8))
			.isNotEqualTo(anybody.bytes(open + ".pdf?lang=fr").body());
		assertThat(anybody.bytes(open + "/door-1.pdf").statusCode()).isEqualTo(200);
		assertThat(anybody.bytes(open + "/door-2.pdf").statusCode()).isEqualTo(404);
		String page = anybody.open(open + "?lang=fi").document().html();
		assertThat(page).contains(version.timetable().days().get(0).day() + ".pdf?lang=fi", "door-1.pdf?lang=fi");
	}

	@Test
	void aTeamsPageAndItsOrderSayWhenItSkates() {
		this.timetables.fill(this.id, 0, REFEREE);
		this.day.draw(1);
		this.versions.publish(this.id, 1, "", REFEREE);
		EntryView team = this.day.entries().get(0);
		String follow = "/follow/" + this.day.competition().slug();
		Visitor anybody = new Visitor(port());
		Visitor.Page page = anybody.open(follow + "/team/" + team.id());
		assertThat(page.document().select("a[href$=/timetable/team/" + team.id() + "]")).isNotEmpty();
		assertThat(page.document().select("a[href$=/timetable/team/" + team.id() + ".ics]")).isNotEmpty();
		Instant at = this.versions.latest(this.id)
			.orElseThrow()
			.timetable()
			.teamTimes(this.day.segment(1).value())
			.get(team.id().value());
		String clock = at.atZone(this.day.competition().zone()).toLocalTime().toString().substring(0, 5);
		assertThat(page.document().select("ol.times time").eachText()).contains(clock);
		String path = this.day.event().slug() + "/" + this.day.event().segments().get(0).slug() + "/order";
		assertThat(anybody.open(follow + "/" + path).text()).contains("planned " + clock);
		String data = new String(anybody
			.bytes("/api/public/competitions/" + this.day.competition().slug() + "/events/"
					+ path.replace("/", "/segments/").replace("/segments/order", "/order"))
			.body(), StandardCharsets.UTF_8);
		assertThat(data).contains("\"entry\":\"" + team.id() + "\",\"planned\":\"" + at + "\"");
		assertThat(anybody.open(follow + "/" + path).document().select(".starts .start-time"))
			.hasSameSizeAs(this.day.entries());
		this.entries.withdraw(team.id(), team.version(), "Injury", REFEREE);
		assertThat(anybody.open(follow + "/" + path).document().select(".starts li:has(.start-time) .name").eachText())
			.hasSize(this.day.entries().size() - 1)
			.doesNotContain(team.team().name());
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
		return line(action, this.id);
	}

	private String line(String action, Object subject) {
		Map<String, Object> line = this.database
			.sql("select before_text, after_text from record_line where action = ? and subject_id = ? "
					+ "order by number desc fetch first 1 row only")
			.param(action)
			.param(subject.toString())
			.query()
			.singleRow();
		return line.get("before_text") + "|" + line.get("after_text");
	}

}
