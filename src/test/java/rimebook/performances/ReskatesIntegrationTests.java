package rimebook.performances;

import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.clock.ClockView;
import rimebook.clock.InterruptionCause;
import rimebook.clock.PerformanceClock;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatView;
import rimebook.placement.MarkSubmission;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.PointsJudge;
import rimebook.published.Standing;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.tablets.JudgeTable;
import rimebook.tablets.JudgeTables;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Programmes that are skated again, and teams that skate out of the drawn order. */
@WholeApplication
class ReskatesIntegrationTests {

	private static final Actor REFEREE = SmallCompetition.REFEREE;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private PerformanceClock clock;

	@Autowired
	private Reskates reskates;

	@Autowired
	private SegmentRun run;

	@Autowired
	private JudgeTables tables;

	@Autowired
	private DeductionNotes deductions;

	@Autowired
	private ElementCalls calls;

	@Autowired
	private Standings standings;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private SegmentId segment;

	private PerformanceView first;

	private void begin(SmallCompetition competition) {
		this.day = competition;
		this.segment = competition.open(1);
		this.first = competition.callNext(1);
	}

	@Test
	void nothingOfASkateThatDoesNotCountIsClosed() {
		begin(SmallCompetition.running(this.context, 2, 3));
		List<CardMarks> void1 = this.day.sendAll(this.first);
		PerformanceView again = skateAgain();
		assertThat(this.day.now(this.first).status()).isEqualTo(PerformanceStatus.SET_ASIDE);
		refused("performance-set-aside", "does not count", () -> this.day.close(this.first));
		refused("cards-missing", "Judge 1, Judge 2, Judge 3", () -> this.day.close(again));
		List<CardMarks> counted = this.day.sendAll(again);
		this.day.close(again);
		Standing.Row row = this.standings.latest(this.segment).orElseThrow().standing().rows().get(0);
		assertThat(row.cards()).hasSize(3);
		assertThat(row.cards().get(0).first()).isEqualTo(counted.get(0).first()).isNotEqualTo(void1.get(0).first());
		assertThat(this.day.performances(1)).extracting(PerformanceView::startNumber).containsExactly(1, 2);
	}

	@Test
	void cardOfTheSkateThatDoesNotCountIsNeverTakenForTheReskate() {
		begin(SmallCompetition.running(this.context, 2, 3));
		MarkSubmission.SubmitCard kept = new MarkSubmission.SubmitCard(UUID.randomUUID(), this.first.id(), 1,
				new CardMarks(450, 460));
		PerformanceView again = skateAgain();
		SeatView seat = this.day.seats().get(0);
		refused("performance-set-aside", "stays on record", () -> this.day.send(kept, seat));
		JudgeTable table = this.tables.tableOf(seat.id());
		assertThat(table.course().now().performance()).isEqualTo(again.id()).isNotEqualTo(this.first.id());
		assertThat(table.course().cards()).as("none of its own to change").isEmpty();
		assertThat(table.decided().ended()).containsExactly(this.first.id());
		assertThat(table.course().now().remarks()).singleElement()
			.satisfies((notice) -> assertThat(notice.remark().text()).contains("mark only the re-skated programme"));
	}

	@Test
	void whatWasMarkedCalledAndDeductedStaysInSightAndOnRecord() {
		begin(PointsCompetition.running(this.context, 2, 3));
		new CalledElements(this.context, this.first).call("I4+pi3", "ME4");
		PointsJudge.send(this.context, this.first, this.day.seats().get(0),
				this.calls.ofPerformance(this.first.id()).orElseThrow(), 2);
		this.deductions.add(this.first.id(), 0, new DeductionNotes.NoteDeductions.Item("fall", 1),
				new DeductionNotes.Origin(DeductionNotes.Noter.SELF, null), REFEREE);
		PerformanceView again = skateAgain();
		assertThat(this.calls.ofPerformance(again.id())).isEmpty();
		assertThat(this.deductions.ofPerformance(again.id())).isEmpty();
		refused("performance-set-aside", "does not count",
				() -> this.deductions.add(this.first.id(), 1, new DeductionNotes.NoteDeductions.Item("fall", 1),
						new DeductionNotes.Origin(DeductionNotes.Noter.SELF, null), REFEREE));
		Reskates.SetAside aside = this.reskates.ofSegment(this.segment).get(0);
		assertThat(aside.lines()).hasSize(3)
			.anySatisfy((line) -> assertThat(line).startsWith("Elements: ").contains("I4+pi3"))
			.anySatisfy((line) -> assertThat(line).startsWith("Judge 1: ").contains("+2"))
			.contains("Deductions: fall 1");
		assertThat(stand().document().selectFirst("#set-aside").text()).contains("No. 1", "fall 1", "ME4");
		assertThat(record("performance.set-aside")).contains("fall 1", "ME4");
	}

	@Test
	void reskateIsTakenBackUntilSomethingIsBuiltUponIt() {
		begin(SmallCompetition.running(this.context, 2, 3));
		this.day.sendAll(this.first);
		PerformanceView again = skateAgain();
		this.reskates.takeBack(again.id(), again.version(), REFEREE);
		assertThat(this.clock.ofPerformance(this.first.id()).state()).isEqualTo(ClockView.ClockState.INTERRUPTED);
		assertThat(this.day.performances(1)).extracting(PerformanceView::id).contains(this.first.id());
		assertThat(this.reskates.ofSegment(this.segment)).isEmpty();
		PerformanceView second = orderAgain(this.day.now(this.first));
		assertThat(this.reskates.ofSegment(this.segment)).hasSize(1);
		this.clock.start(second.id(), 0, REFEREE);
		refused("clock-started", "was started",
				() -> this.reskates.takeBack(second.id(), this.day.now(second).version(), REFEREE));
	}

	@Test
	void othersSkateBeforeTheReskate() {
		begin(SmallCompetition.running(this.context, 3, 3));
		this.day.sendAll(this.first);
		PerformanceView again = skateAgain();
		this.reskates.letWait(again.id(), again.version(), "Rest after the fall", REFEREE);
		assertThat(this.run.next(this.segment).orElseThrow().startNumber()).isEqualTo(2);
		this.day.skateNext(1);
		Element row = stand().document().select("#order li").first();
		assertThat(row.text()).contains("skates later", "skates again from the beginning", "Rest after the fall");
		PerformanceView waiting = this.day.now(again);
		this.run.call(waiting.id(), waiting.version(), REFEREE);
		this.day.sendAll(waiting);
		this.day.close(waiting);
		this.day.skateNext(1);
		assertThat(this.standings.latest(this.segment).orElseThrow().standing().rows()).hasSize(3);
	}

	@Test
	void withdrawalWhileTheReskateWaitsEndsItAndLeavesWhatIsSetAside() {
		begin(SmallCompetition.running(this.context, 2, 3));
		this.day.sendAll(this.first);
		PerformanceView again = skateAgain();
		this.reskates.letWait(again.id(), again.version(), "Rest after the fall", REFEREE);
		this.run.end(again.id(), this.day.now(again).version(), PerformanceStatus.WITHDRAWN, "Hurt", REFEREE);
		assertThat(this.day.now(this.first).status()).isEqualTo(PerformanceStatus.SET_ASIDE);
		assertThat(this.day.now(again).status()).isEqualTo(PerformanceStatus.WITHDRAWN);
		this.day.skateNext(1);
		assertThat(this.standings.latest(this.segment).orElseThrow().standing().rows()).hasSize(2);
	}

	@Test
	void whatCameBeforeTheInterruptionCountsWhereTheRefereeSaysSo() {
		begin(PointsCompetition.running(this.context, 2, 3));
		new CalledElements(this.context, this.first).call("I4+pi3");
		this.deductions.add(this.first.id(), 0, new DeductionNotes.NoteDeductions.Item("fall", 1),
				new DeductionNotes.Origin(DeductionNotes.Noter.SELF, null), REFEREE);
		this.clock.start(this.first.id(), 0, REFEREE);
		this.clock.interrupt(this.first.id(), 1, InterruptionCause.RINK, REFEREE);
		this.clock.reskate(this.first.id(), 2, Reskates.Marking.AS_FIRST_SKATED, REFEREE);
		this.reskates.letWait(this.first.id(), this.day.now(this.first).version(), "The ice is mended", REFEREE);
		this.day.callNext(1);
		refused("another-on-ice", "2", () -> call(this.first, ""));
		PerformanceView second = this.day.performances(1).get(1);
		this.run.takeBack(second.id(), second.version(), REFEREE);
		call(this.first, "");
		assertThat(this.calls.ofPerformance(this.first.id()).orElseThrow().elements()).hasSize(1);
		assertThat(this.deductions.ofPerformance(this.first.id()).orElseThrow().deductions()).hasSize(1);
		assertThat(this.clock.ofPerformance(this.first.id()).state()).isEqualTo(ClockView.ClockState.WAITING);
		assertThat(this.reskates.ofSegment(this.segment)).isEmpty();
	}

	@Test
	void ofAProgrammeSkatedToItsEndOnlyTheWholeReskateCounts() {
		begin(SmallCompetition.running(this.context, 2, 3));
		this.clock.start(this.first.id(), 0, REFEREE);
		this.clock.stop(this.first.id(), 1, REFEREE);
		refused("nothing-interrupted", "skated to its end",
				() -> this.clock.reskate(this.first.id(), 2, Reskates.Marking.AS_FIRST_SKATED, REFEREE));
		this.clock.reskate(this.first.id(), 2, Reskates.Marking.RESKATED_ONLY, REFEREE);
		assertThat(this.clock.ofPerformance(onIce().id()).state()).isEqualTo(ClockView.ClockState.WAITING);
	}

	@Test
	void teamIsCalledOutOfOrderOnlyWithAReason() {
		begin(SmallCompetition.running(this.context, 4, 3));
		this.day.sendAll(this.first);
		this.day.close(this.first);
		PerformanceView third = this.day.performances(1).get(2);
		refused("call-reason-missing", "number 2 comes next", () -> call(third, " "));
		call(third, "No. 2 waits for its bus");
		Element order = stand().document().selectFirst("#order");
		assertThat(order.select("li").get(1).text()).contains("passed over");
		assertThat(order.select("li").get(2).text()).contains("called out of the drawn order: No. 2 waits for its bus");
		assertThat(record("performance.called-out-of-order")).contains("waits for its bus");
		this.day.sendAll(third);
		this.day.close(third);
		assertThat(this.run.next(this.segment).orElseThrow().startNumber()).isEqualTo(4);
	}

	@Test
	void teamThatCanSkateOnLetsNobodyPass() {
		begin(SmallCompetition.running(this.context, 2, 3));
		refused("performance-state", "only while it is interrupted",
				() -> this.reskates.letWait(this.first.id(), this.first.version(), "Why not", REFEREE));
	}

	@Test
	void refereeDoesAllOfItWithoutScripts() {
		begin(SmallCompetition.running(this.context, 3, 3));
		this.clock.start(this.first.id(), 0, REFEREE);
		this.clock.interrupt(this.first.id(), 1, InterruptionCause.RINK, REFEREE);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		Visitor.Page page = referee.open("/desk/stand/" + this.segment);
		page = page.submit("form[action$='/clock/reskate']", Map.of("marking", "RESKATED_ONLY"));
		assertThat(page.text()).contains("Set aside: this does not count", "Take back the re-skate");
		page = page.submit("form[action$='/let-wait']", Map.of("waitReason", ""));
		assertThat(page.text()).contains("Why others skate first");
		page = page.submit("form[action$='/let-wait']", Map.of("waitReason", "A rest"));
		assertThat(page.text()).contains("The team waits", "Call No. 2");
		String third = this.day.performances(1).get(2).id().toString();
		page = page.submit("form[action$='/call-other']", Map.of("called", third, "callReason", ""));
		assertThat(page.text()).contains("number 2 comes next");
		page = page.submit("form[action$='/call-other']", Map.of("called", third, "callReason", "No. 2 is late"));
		assertThat(page.text()).contains("called out of the drawn order: No. 2 is late");
	}

	private PerformanceView skateAgain() {
		this.clock.start(this.first.id(), 0, REFEREE);
		this.clock.interrupt(this.first.id(), 1, InterruptionCause.RINK, REFEREE);
		return orderAgain(this.first);
	}

	private PerformanceView orderAgain(PerformanceView performance) {
		int touches = this.clock.ofPerformance(performance.id()).touches();
		this.clock.reskate(performance.id(), touches, Reskates.Marking.RESKATED_ONLY, REFEREE);
		return onIce();
	}

	private PerformanceView onIce() {
		return this.day.performances(1)
			.stream()
			.filter((one) -> one.status() == PerformanceStatus.ON_ICE)
			.findFirst()
			.orElseThrow();
	}

	private void call(PerformanceView performance, String reason) {
		this.run.call(performance.id(), this.day.now(performance).version(), reason, REFEREE);
	}

	private Visitor.Page stand() {
		return Crew.visitor(this.context, Role.REFEREE).open("/desk/stand/" + this.segment);
	}

	private String record(String action) {
		return this.database
			.sql("select before_text, after_text, reason from record_line where action = ? order by number desc")
			.param(action)
			.query()
			.listOfRows()
			.get(0)
			.values()
			.toString();
	}

	private static void refused(String code, String words, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.withMessageContaining(words)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
