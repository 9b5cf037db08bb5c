package rimebook.stand.web;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.accounts.SeatCodes;
import rimebook.competition.SegmentId;
import rimebook.entries.ClubView;
import rimebook.entries.TeamView;
import rimebook.panels.Panels;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.remarks.RemarkReceipts;
import rimebook.remarks.Remarks;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** The referee's stand and the running sheet, used without JavaScript. */
@WholeApplication
class StandIntegrationTests {

	private static final CardMarks CARD = new CardMarks(530, 540);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private SegmentRun run;

	private Visitor referee;

	private SmallCompetition day;

	@BeforeEach
	void refereeComes() {
		this.referee = Crew.visitor(this.context, Role.REFEREE);
		this.day = SmallCompetition.running(this.context, 3, 3);
	}

	@Test
	void segmentsOfRunningCompetitionsAreListedWithTheirState() {
		this.day.open(1);
		this.day.callNext(1);
		String row = this.referee.open("/desk/stand").document().select("tr:has(a[href$=" + segment() + "])").text();
		assertThat(row).contains("Junior, Short programme", "No. 1 on the ice", "0 of 3");
	}

	@Test
	void whatIsMissingBeforeOpeningIsListedAndLinked() {
		Visitor.Page page = this.referee.open("/desk/stand/" + this.day.segment(2));
		assertThat(page.text()).contains("The segment Short programme comes first.",
				"Nothing is drawn for this segment yet.");
		assertThat(page.document().select(".steps a").eachAttr("href")).containsExactly("/desk/stand/" + segment(),
				"/desk/draw/" + this.day.segment(2));
		Visitor.Page refused = page.press("form[action$=/open]");
		assertThat(refused.path()).isEqualTo("/desk/stand/" + this.day.segment(2));
		assertThat(refused.document().select("[role=alert]").text()).contains("is not finished yet");
		assertThat(this.run.performances(this.day.segment(2))).isEmpty();
	}

	@Test
	void refereeRunsASegmentWithButtonsAlone() {
		this.day.draw(1);
		Visitor.Page page = stand().press("form[action$=/open]");
		assertThat(page.text()).contains("The segment is open.", "Nobody is on the ice.");
		page = page.press("form[action$=/call]");
		assertThat(page.text()).contains("3 of 3 cards are missing: Judge 1, Judge 2, Judge 3");
		assertThat(page.document().select("button[disabled]").text()).isEqualTo("Close the 3 cards of No. 1");
		this.day.sendAll(performance(1));
		page = stand();
		assertThat(page.document().select(".seat-list .state").eachText()).hasSize(3)
			.allMatch((state) -> state.matches("received \\d\\d:\\d\\d:\\d\\d"));
		page = page.press("form[action$=/close]");
		assertThat(page.text()).contains("The cards are closed and the standing is out.", "1 of 3 done");
		assertThat(performance(1).status()).isEqualTo(PerformanceStatus.CLOSED);
	}

	@Test
	void standingThatTheClosedCardsMadeStandsBesideTheNextCall() {
		this.day.open(1);
		assertThat(stand().document().select("#standing-now h2")).isEmpty();
		this.day.skateNext(1);
		Visitor.Page before = stand();
		assertThat(before.document().select("#standing-now").text()).contains("Standing after 1 of 3 teams", "new");
		this.day.skateNext(1);
		assertThat(live(before).headers().firstValue("HX-Redirect")).as("another team comes next, so its forms do, too")
			.isPresent();
		assertThat(stand().text()).contains("Standing after 2 of 3 teams");
		assertThat(stand().document().select("#standing-now li")).hasSize(2);
		assertThat(stand().document().select("#standing-now li.new")).hasSize(1);
	}

	@Test
	void callIsTakenBackUntilTheFirstCardIsIn() {
		this.day.open(1);
		Visitor.Page called = stand().press("form[action$=/call]");
		this.day.send(performance(1), this.day.seats().get(0), 1, CARD);
		assertThat(stand().document().select("form[action$=/take-back]")).isEmpty();
		assertThat(called.press("form[action$=/take-back]").document().select("[role=alert]").text())
			.contains("the call can no longer be taken back");
		assertThat(performance(1).status()).isEqualTo(PerformanceStatus.ON_ICE);
	}

	@Test
	void closingOnAnOldLookIsRefusedOnTheStandItself() {
		this.day.open(1);
		this.day.callNext(1);
		this.day.sendAll(performance(1));
		Visitor.Page old = stand();
		stand().press("form[action$=/close]");
		assertThat(old.press("form[action$=/close]").document().select("[role=alert]").text())
			.contains("Somebody else changed this performance");
	}

	@Test
	void remarkReachesThePanel() {
		this.day.open(1);
		this.day.callNext(1);
		Visitor.Page told = stand().submit("#remark-form", Map.of("kind", "TIME", "text", "4 s too long"));
		assertThat(told.text()).contains("The panel has been told.", "Time: 4 s too long");
		assertThat(this.context.getBean(Remarks.class).ofPerformance(performance(1).id()))
			.extracting(Remarks.RemarkView::kind)
			.containsExactly(Remarks.RemarkKind.TIME);
	}

	@Test
	void standTellsWhoHasSeenARemark() {
		this.day.open(1);
		this.day.callNext(1);
		this.context.getBean(Remarks.class)
			.note(performance(1).id(), Remarks.RemarkKind.FALL, "one skater", SmallCompetition.REFEREE);
		assertThat(stand().document().select("#told").text())
			.contains("seen by 0 of 3, not yet Judge 1, Judge 2, Judge 3");
		see(0);
		see(2);
		assertThat(stand().document().select("#told").text()).contains("seen by 2 of 3, not yet Judge 2");
		see(1);
		assertThat(stand().document().select("#told .signed").text()).isEqualTo("seen by all 3");
	}

	private void see(int seat) {
		this.context.getBean(RemarkReceipts.class)
			.see(this.context.getBean(Remarks.class).ofPerformance(performance(1).id()).get(0).id(),
					this.day.seats().get(seat).id(), SmallCompetition.REFEREE);
	}

	@Test
	void standTellsWhichTabletIsHeardAndKeepsCards() {
		this.day.open(1);
		this.day.callNext(1);
		this.context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		this.context.getBean(SeatCodes.class).pair(this.day.seats().get(0).code(), "a tablet", null);
		this.context.getBean(Panels.class).noteTablet(this.day.seats().get(0).id(), 2, false);
		assertThat(stand().document().select(".seat-list li").eachText()).satisfiesExactly(
				(seat) -> assertThat(seat).contains("in contact", "2 cards wait on the tablet"),
				(seat) -> assertThat(seat).contains("no tablet has joined").doesNotContain("wait"),
				(seat) -> assertThat(seat).contains("no tablet has joined"));
	}

	@Test
	void refusedRemarkKeepsWhatWasTyped() {
		this.day.open(1);
		this.day.callNext(1);
		String long501 = "x".repeat(501);
		Visitor.Page refused = stand().submit("#remark-form", Map.of("kind", "COSTUME", "text", long501));
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.document().select("#text").val()).isEqualTo(long501);
		assertThat(refused.document().select("#kind [selected]").val()).isEqualTo("COSTUME");
		assertThat(refused.document().select("#text-fault").text()).contains("at most 500");
		assertThat(this.context.getBean(Remarks.class).ofPerformance(performance(1).id())).isEmpty();
	}

	@Test
	void quickRemarkFillsTheFormAndTellsNobodyYet() {
		this.day.open(1);
		this.day.callNext(1);
		Visitor.Page filled = stand().submit("#remark-form", Map.of("quick", "TOO_LONG"));
		assertThat(filled.document().select("#kind [selected]").val()).isEqualTo("TIME");
		assertThat(filled.document().select("#text").val()).isEqualTo("5 s too long");
		assertThat(this.context.getBean(Remarks.class).ofPerformance(performance(1).id())).isEmpty();
	}

	@Test
	void performanceIsEndedWithAReasonAfterTheCaution() {
		this.day.open(1);
		this.day.callNext(1);
		Visitor.Page page = stand();
		assertThat(page.document().select("#end").text()).contains("Is a skater hurt?", "medical and safety rules");
		Visitor.Page ended = page.submit("form[action$=/end]",
				Map.of("how", "NOT_FINISHED", "reason", "A skater was hurt."));
		assertThat(ended.text()).contains("The performance was ended", "not finished", "A skater was hurt.");
		assertThat(performance(1).status()).isEqualTo(PerformanceStatus.NOT_FINISHED);
	}

	@Test
	void endWithoutReasonOrWayIsShownAgainAsTyped() {
		this.day.open(1);
		this.day.callNext(1);
		Visitor.Page noReason = stand().submit("form[action$=/end]", Map.of("how", "DISQUALIFIED", "reason", " "));
		assertThat(noReason.status()).isEqualTo(422);
		assertThat(noReason.document().select("input[name=how][checked]").val()).isEqualTo("DISQUALIFIED");
		assertThat(noReason.document().select("details#end[open]")).hasSize(1);
		Visitor.Page noWay = stand().submit("form[action$=/end]", Map.of("reason", "Music failed"));
		assertThat(noWay.text()).contains("Please choose how it ended.");
		assertThat(noWay.document().select("#reason").text()).isEqualTo("Music failed");
		Visitor.Page noSuchWay = stand().submit("form[action$=/end]", Map.of("how", "TIRED", "reason", "Music failed"));
		assertThat(noSuchWay.status()).isEqualTo(422);
		assertThat(performance(1).status()).isEqualTo(PerformanceStatus.ON_ICE);
	}

	@Test
	void teamThatWaitsCanBeWithdrawnButNotBrokenOff() {
		this.day.open(1);
		Visitor.Page page = this.referee.open("/desk/stand/" + segment() + "?end=" + performance(3).id());
		assertThat(page.document().select("input[name=how]").eachAttr("value")).containsExactly("WITHDRAWN",
				"DISQUALIFIED");
		Visitor.Page ended = page.submit("form[action$=/end]", Map.of("how", "WITHDRAWN", "reason", "Ill"));
		assertThat(ended.document().select("#order li.gap").text()).contains("3", "withdrawn", "Ill");
	}

	@Test
	void onlyThePartsThatChangedAreSentAgain() {
		this.day.open(1);
		this.day.callNext(1);
		Visitor.Page page = stand();
		assertThat(live(page).statusCode()).isEqualTo(204);
		this.day.send(performance(1), this.day.seats().get(1), 1, CARD);
		HttpResponse<String> changed = live(page);
		Document parts = Jsoup.parse(changed.body());
		assertThat(changed.statusCode()).isEqualTo(200);
		assertThat(parts.select("[hx-swap-oob]").eachAttr("id")).containsExactly("seats", "decision");
		assertThat(parts.select("#seats").text()).contains("Judge 2").contains("5.3 / 5.4");
		assertThat(parts.select("#decision").text()).contains("Judge 1, Judge 3");
	}

	@Test
	void anotherTeamOnTheIceOpensTheStandAnew() {
		this.day.open(1);
		Visitor.Page page = stand();
		this.day.callNext(1);
		HttpResponse<String> answer = live(page);
		assertThat(answer.statusCode()).isEqualTo(204);
		assertThat(answer.headers().firstValue("HX-Redirect")).contains("/desk/stand/" + segment());
	}

	@Test
	void finishedSegmentLeadsToItsResult() {
		this.day.open(1);
		this.day.skateRest(1);
		assertThat(stand().document().select("#decision a[href=/desk/results/" + segment() + "]")).hasSize(1);
	}

	@Test
	void unknownSegmentOrPerformanceIsNotFound() {
		assertThat(this.referee.open("/desk/stand/01a20000-0000-7000-8000-0000000000ff").status()).isEqualTo(404);
		assertThat(this.referee.open("/desk/stand/five").status()).isEqualTo(400);
		this.day.open(1);
		assertThat(this.referee.open("/desk/stand/" + segment() + "?end=01a20000-0000-7000-8000-0000000000ff").status())
			.isEqualTo(404);
	}

	@Test
	void runningSheetHasNamesAndStatesButNoMark() {
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		String sheet = "/desk/sheet/" + segment();
		assertThat(announcer.open(sheet).text()).contains("not drawn yet");
		this.day.draw(1);
		assertThat(announcer.open(sheet).document().select(".announcer .state").eachText()).containsExactly("next",
				"to come", "to come");
		this.run.open(segment(), SmallCompetition.REFEREE);
		this.day.skateNext(1);
		PerformanceView second = this.day.callNext(1);
		this.day.send(second, this.day.seats().get(0), 1, CARD);
		Visitor.Page page = announcer.open(sheet);
		assertThat(page.document().select(".announcer .state").eachText()).containsExactly("done", "on the ice",
				"next");
		assertThat(page.document().select(".announcer").text()).doesNotContainPattern("\\d\\.\\d");
		assertThat(page.document().select(".aloud").text()).contains("The marks of ",
				"is the first with a place in the segment");
		assertThat(announcer.open("/desk/sheet").text()).contains("No. 2 on the ice");
	}

	@Test
	void runningSheetIsSentAgainOnlyWhenItMoved() {
		this.day.open(1);
		Visitor announcer = Crew.visitor(this.context, Role.ANNOUNCER);
		String live = announcer.open("/desk/sheet/" + segment()).document().select("#live").attr("data-part");
		live += "&seen=" + announcer.open("/desk/sheet/" + segment()).document().select("#live").attr("data-seen");
		assertThat(announcer.json("GET", live, "").statusCode()).isEqualTo(204);
		this.day.callNext(1);
		HttpResponse<String> moved = announcer.json("GET", live, "");
		assertThat(moved.statusCode()).isEqualTo(200);
		assertThat(Jsoup.parse(moved.body()).select("body > *").eachAttr("id")).containsExactly("live");
		assertThat(moved.body()).contains("on the ice");
	}

	@Test
	void saidNameStandsBeforeTheWrittenOne() {
		RunningSheet.SheetRow row = new RunningSheet.SheetRow(1, 1,
				new TeamView(new TeamView.Id(UUID.randomUUID()), "Tern & Gull",
						new ClubView(new ClubView.Id(UUID.randomUUID()), "Club", "Town"), "Tern and Gull"),
				"waiting", List.of());
		assertThat(row.isSpokenOtherwise()).isTrue();
		assertThat(RunningSheet.SheetRow.withNext(List.of(row), 1)).singleElement()
			.extracting(RunningSheet.SheetRow::mark)
			.isEqualTo("next");
	}

	private SegmentId segment() {
		return this.day.segment(1);
	}

	private PerformanceView performance(int number) {
		return this.day.performances(1).get(number - 1);
	}

	private Visitor.Page stand() {
		return this.referee.open("/desk/stand/" + segment());
	}

	/** What the page asks for every second. */
	private HttpResponse<String> live(Visitor.Page page) {
		StringBuilder query = new StringBuilder("?");
		page.document()
			.select("input.print")
			.forEach((print) -> query.append(print.attr("name")).append('=').append(print.val()).append('&'));
		return this.referee.json("GET", page.document().select("#follow").attr("hx-get") + query, "");
	}

}
