package rimebook.stand.web;

import java.util.List;
import java.util.Map;

import org.jsoup.select.Elements;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.clock.ClockFixtures;
import rimebook.clock.ClockView;
import rimebook.clock.InterruptionCause;
import rimebook.clock.PerformanceClock;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.SegmentView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.points.DeductionNotes;
import rimebook.points.NotedDeduction;
import rimebook.remarks.Remarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

/** The clock and the deductions at the stand, used without JavaScript. */
@WholeApplication
class StandClockIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@LocalServerPort
	private int port;

	@Autowired
	private PerformanceClock clock;

	@Autowired
	private SegmentRun run;

	@Autowired
	private DeductionNotes deductions;

	private Visitor referee;

	private SmallCompetition day;

	private PerformanceView onIce;

	@BeforeEach
	void refereeComes() {
		this.referee = Crew.visitor(this.context, Role.REFEREE);
		callIn(SmallCompetition.running(this.context, 2, 3));
	}

	private void callIn(SmallCompetition competition) {
		this.day = competition;
		this.day.open(1);
		this.onIce = this.day.callNext(1);
	}

	private void callInPoints() {
		callIn(SmallCompetition.running(this.context, 2,
				new DraftEvent("Senior",
						DraftEvent.Judging.byPoints(3, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
						List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()))));
	}

	@Test
	void programmeIsTimedWithButtonsAlone() {
		Visitor.Page page = stand();
		assertThat(page.document().select("#clock").text()).contains("since the call", "Start: first movement");
		page = page.press("form[action$=/clock/start]");
		assertThat(page.document().select("#clock").text()).contains("not yet inside the time", "Stop: complete stop");
		assertThat(page.text()).contains("The clock has not been stopped.");
		page = page.press("form[action$=/clock/stop]");
		assertThat(page.document().select("#clock").text()).contains("too short", "Take back the stop",
				"Was the clock started and stopped at the right moment?");
		assertThat(page.document().select(".proposals .accept")).isNotEmpty()
			.allSatisfy((button) -> assertThat(button.closest("details")).isNotNull());
		page = page.press("form[action$=/clock/take-back]");
		assertThat(clockState()).isEqualTo(ClockView.ClockState.RUNNING);
		assertThat(page.document().select("#clock .log li.void")).hasSize(2);
	}

	@Test
	void cautionStandsBeforeTheCausesOfAnInterruption() {
		Visitor.Page page = stand().press("form[action$=/clock/start]");
		String procedure = page.document().select("#interruption").text();
		assertThat(procedure.indexOf("Is a skater hurt?")).isBetween(0, procedure.indexOf("Injury"));
		assertThat(procedure).contains("The rulebook in force and its officials decide");
		page = page.submit("form[action$=/clock/interrupt]", Map.of("cause", "INJURY"));
		assertThat(page.document().select("#clock").text()).contains("Interrupted: Injury; limit 3:00",
				"At most 3 minutes, counted from the referee’s signal. Only one continuation");
		assertThat(page.document().select("#told").text()).contains("On the ice: Interrupted: injury");
		page = page.submit(".procedure.open form[action$=/clock/interrupt]", Map.of("cause", "EQUIPMENT"));
		assertThat(page.document().select("#clock").text()).contains("Interrupted: Equipment; limit 3:00");
		page = page.submit("#resume-form", Map.of("point", "the second block"));
		assertThat(page.document().select("#told").text()).contains("Resumed at the point of the second block");
	}

	@Test
	void reskateNeedsToSayWhatIsMarked() {
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, 40)
			.interrupted(InterruptionCause.MUSIC, 20);
		Visitor.Page page = stand();
		assertThat(page.text()).contains("within 30 seconds of the start");
		page = page.press("#reskate-form");
		assertThat(page.document().select("[role=alert]").text()).contains("what the judges mark");
		page = page.submit("#reskate-form", Map.of("marking", "AS_FIRST_SKATED"));
		assertThat(page.text()).contains("the part before counts as first skated", "Start: first movement");
		assertThat(this.clock.ofPerformance(this.onIce.id()).attempt().run()).isEqualTo(2);
	}

	@Test
	void refusedPointIsShownAgain() {
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, 60)
			.interrupted(InterruptionCause.RINK, 20);
		String long201 = "x".repeat(201);
		Visitor.Page refused = stand().submit("#resume-form", Map.of("point", long201));
		assertThat(refused.document().select("[role=alert]").text()).contains("at most 200");
		assertThat(refused.document().select("#point").val()).isEqualTo(long201);
	}

	@Test
	void whatSomebodyElsePressedIsToldAndNothingIsDoneTwice() {
		Visitor.Page old = stand();
		stand().press("form[action$=/clock/start]");
		assertThat(old.press("form[action$=/clock/start]").document().select("[role=alert]").text())
			.contains("Somebody else touched the clock", "it is running now");
	}

	@Test
	void tooLongIsProposedAsANoticeThatCanBeChangedOrSentAsItIs() {
		int over = this.day.event().segments().get(0).facts().programmeSeconds()
				+ this.day.event().segments().get(0).facts().toleranceSeconds() + 12;
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, over + 5)
			.touched(ClockView.ClockAct.STOP, 5);
		Visitor.Page page = stand();
		String notice = "12 s too long: deduct 0.2 from both marks";
		assertThat(page.document().select(".proposals").text()).contains("Too long by 0:12",
				"Tell the panel: " + notice);
		Visitor.Page filled = this.referee.open("/desk/stand/" + this.day.segment(1));
		filled.document()
			.select(".notice-proposal")
			.attr("action", "/desk/stand/" + this.day.segment(1) + "/clock/notice");
		assertThat(filled.submit(".notice-proposal", Map.of()).document().select("#text").val()).isEqualTo(notice);
		assertThat(this.context.getBean(Remarks.class).ofPerformance(this.onIce.id())).isEmpty();
		page = page.submit(".notice-proposal", Map.of());
		assertThat(this.context.getBean(Remarks.class).ofPerformance(this.onIce.id()))
			.extracting(Remarks.RemarkView::text)
			.containsExactly(notice);
		assertThat(page.document().select(".proposals")).isEmpty();
	}

	@Test
	void timeInPointsIsProposedAsADeductionAndTakenWithOnePress() {
		callInPoints();
		int over = this.day.event().segments().get(0).facts().programmeSeconds()
				+ this.day.event().segments().get(0).facts().toleranceSeconds() + 6;
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, over + 5)
			.touched(ClockView.ClockAct.STOP, 5);
		Visitor.Page page = stand().press(".proposals form");
		assertThat(page.document().select("#deductions").text()).contains("Time violation: -2.00 (2)");
		assertThat(page.document().select(".proposals form[action$=/deductions] [value=time]")).isEmpty();
		assertThat(noted()).extracting(NotedDeduction::item, NotedDeduction::count).containsExactly(tuple("time", 2));
	}

	@Test
	void touchTakesItsDeductionAlongAfterAsking() {
		callInPoints();
		SegmentView segment = this.day.event().segments().get(0);
		int over = segment.facts().programmeSeconds() + segment.facts().toleranceSeconds() + 6;
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, over + 5)
			.touched(ClockView.ClockAct.STOP, 5);
		Visitor.Page old = stand();
		Visitor.Page page = deduct(stand().press(".proposals form"), "fall", "1", "SELF");
		assertThat(page.document().select("#take-along").text()).contains("Take back the stop", "Time violation -2.00")
			.doesNotContain("Fall");
		assertThat(old.press("form[action$=/clock/take-back]").document().select("[role=alert]").text())
			.contains("with this touch goes", "Time violation -2.00", "Nothing was changed");
		assertThat(clockState()).isEqualTo(ClockView.ClockState.STOPPED);
		page = page.press("#take-along form");
		assertThat(clockState()).isEqualTo(ClockView.ClockState.RUNNING);
		assertThat(noted()).extracting(NotedDeduction::item).containsExactly("fall");
		assertThat(page.document().select("#take-along")).isEmpty();
	}

	@Test
	void touchTakesItsNoticeAlongAndThePanelIsTold() {
		SegmentView segment = this.day.event().segments().get(0);
		int over = segment.facts().programmeSeconds() + segment.facts().toleranceSeconds() + 12;
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, over + 5)
			.touched(ClockView.ClockAct.STOP, 5);
		Visitor.Page page = stand().submit(".notice-proposal", Map.of()).press("#take-along form");
		assertThat(page.document().select("#told").text())
			.contains("On the ice: Taken back: 12 s too long: deduct 0.2 from both marks");
		ClockFixtures.of(this.context, this.onIce).touched(ClockView.ClockAct.STOP, 5);
		assertThat(stand().document().select(".proposals").text()).as("a time found anew is proposed anew")
			.contains("Tell the panel", "s too long");
	}

	@Test
	void whatWasFoundByATouchTakenBackMeanwhileIsNotDeducted() {
		callInPoints();
		SegmentView segment = this.day.event().segments().get(0);
		int over = segment.facts().programmeSeconds() + segment.facts().toleranceSeconds() + 6;
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, over + 5)
			.touched(ClockView.ClockAct.STOP, 5);
		Visitor.Page old = stand();
		stand().press("form[action$=/clock/take-back]");
		assertThat(old.press(".proposals form").text()).contains("no longer stands");
		assertThat(this.deductions.ofPerformance(this.onIce.id())).isEmpty();
	}

	@Test
	void lateStartAndInterruptionAskBeforeTheyAreDeducted() {
		callInPoints();
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, 60)
			.interrupted(InterruptionCause.INJURY, 50)
			.touched(ClockView.ClockAct.RESUME, 5);
		Visitor.Page page = stand();
		assertThat(page.document().select(".proposals li").text()).contains("Interrupted for 0:45",
				"Was its cause the team’s own");
		assertThat(page.document().select(".proposals .accept")).hasSize(1)
			.allSatisfy((button) -> assertThat(button.closest("details")).isNotNull());
	}

	@Test
	void figuresFromMemorySaySoWhereTheRefereeActsOnThem() {
		callInPoints();
		Visitor.Page page = stand();
		assertThat(page.document().select("#item option[value=fall]").text()).contains("from memory");
		assertThat(page.document().select("#clock").text()).contains("are from memory, look them up");
	}

	@Test
	void othersSkateFirstOnlyWhileTheTeamMayWait() {
		assertThat(stand().document().select("#let-wait[hidden]")).hasSize(1);
		ClockFixtures.of(this.context, this.onIce).touched(ClockView.ClockAct.START, 60);
		assertThat(stand().document().select("#let-wait[hidden]")).hasSize(1);
		ClockFixtures.of(this.context, this.onIce).interrupted(InterruptionCause.RINK, 20);
		assertThat(stand().document().select("#let-wait:not([hidden])")).hasSize(1);
	}

	@Test
	void deductionIsNotedForWhoeverNotedItAndRemovedAgain() {
		callInPoints();
		Visitor.Page page = deduct(stand(), "fall", "2", "TECHNICAL_PANEL");
		page = deduct(page, "costume", "1", "JUDGES");
		assertThat(page.document().select("#deductions li").eachText()).satisfiesExactly(
				(first) -> assertThat(first).containsPattern(
						"Fall: -2.00 \\(2\\) \\d\\d:\\d\\d:\\d\\d, technical panel, keyed in by The referee"),
				(second) -> assertThat(second).contains("Costume or prop violation: -1.00",
						"majority of the panel, keyed in by"));
		page = page.press("#deductions li:first-child form");
		assertThat(noted()).extracting(NotedDeduction::item).containsExactly("costume");
		assertThat(noted()).extracting(NotedDeduction::notedAt).doesNotContainNull();
	}

	@Test
	void refusedDeductionIsShownAgainAsTyped() {
		callInPoints();
		Visitor.Page refused = deduct(stand(), "fall", "many", "TECHNICAL_PANEL");
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.document().select("#count").val()).isEqualTo("many");
		assertThat(refused.document().select("#item [selected]").val()).isEqualTo("fall");
		assertThat(refused.document().select("#count-fault").text()).contains("whole number");
		assertThat(refused.document().select("details#deduct[open]")).hasSize(1);
		assertThat(this.deductions.ofPerformance(this.onIce.id())).isEmpty();
	}

	@Test
	void deductionOnAnOlderLookIsRefused() {
		callInPoints();
		Visitor.Page old = stand();
		deduct(stand(), "fall", "1", "SELF");
		assertThat(deduct(old, "fall", "1", "SELF").text()).contains("Other deductions were received meanwhile");
		assertThat(noted()).hasSize(1);
	}

	@Test
	void valuesOfThePlacementRulesAreOfferedAsText() {
		assertThat(stand().document().select("button[name=quick]").eachText())
			.contains("Fall: one skater, down and up: deduct 0.2 from required elements");
		Visitor.Page filled = stand().submit("#remark-form", Map.of("quick", "OMITTED"));
		assertThat(filled.document().select("#text").val())
			.isEqualTo("required element omitted: deduct 0.6 from required elements");
		callInPoints();
		assertThat(stand().document().select("button[value=OMITTED]")).isEmpty();
	}

	@Test
	void announcerSeesTheInterruption() {
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, 60)
			.interrupted(InterruptionCause.INJURY, 20);
		assertThat(announcer.open("/desk/sheet/" + this.day.segment(1)).document().select("li.now .state").text())
			.isEqualTo("on the ice, interrupted");
	}

	@Test
	void everybodySeesThatTheTeamIsBrokenOffButNeverWhy() {
		Visitor.Page running = stand().press("form[action$=/clock/start]");
		assertThat(publicIce().text()).doesNotContain("Interrupted");
		Visitor.Page broken = running.submit("form[action$=/clock/interrupt]", Map.of("cause", "INJURY"));
		assertThat(publicIce().select(".state").text()).isEqualTo("Interrupted");
		assertThat(publicIce().text().toLowerCase()).doesNotContain("injury");
		broken.press("#resume-form");
		assertThat(publicIce().text()).doesNotContain("Interrupted");
	}

	private Elements publicIce() {
		return new Visitor(this.port)
			.open("/follow/" + this.day.competition().slug() + "/" + this.day.event().slug() + "/"
					+ this.day.event().segments().get(0).slug())
			.document()
			.select(".ice");
	}

	@Test
	void nobodyButTheRefereeTouchesTheClock() {
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		assertThat(announcer.open("/desk/stand/" + this.day.segment(1)).status()).isEqualTo(403);
	}

	/** The version of the list stands beside the form, where it follows by itself. */
	private static Visitor.Page deduct(Visitor.Page page, String item, String count, String noter) {
		return page.submit("#deduct-form", Map.of("item", item, "count", count, "noter", noter, "sequence",
				page.document().select("input[form=deduct-form]").val()));
	}

	private List<NotedDeduction> noted() {
		return this.deductions.ofPerformance(this.onIce.id()).orElseThrow().deductions();
	}

	private ClockView.ClockState clockState() {
		return this.clock.ofPerformance(this.onIce.id()).state();
	}

	private Visitor.Page stand() {
		return this.referee.open("/desk/stand/" + this.day.segment(1));
	}

}
