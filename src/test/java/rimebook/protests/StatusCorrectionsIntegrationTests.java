package rimebook.protests;

import java.util.List;

import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.performances.StatusCorrection;
import rimebook.published.Standing;
import rimebook.results.ResultPreview;
import rimebook.results.ResultPublication;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Agreement;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** How a team came through is set late, and back again, by two people. */
@WholeApplication
class StatusCorrectionsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Corrections corrections;

	@Autowired
	private SegmentRun run;

	@Autowired
	private Entries entries;

	@Autowired
	private Standings standings;

	@Autowired
	private ResultPublication publication;

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void aTeamThatSkatedLosesItsPlaceLateAndItsMarksCountAgain(boolean byPoints) {
		for (PerformanceStatus how : List.of(PerformanceStatus.DISQUALIFIED, PerformanceStatus.NOT_FINISHED,
				PerformanceStatus.WITHDRAWN)) {
			SmallCompetition day = skated(byPoints);
			PerformanceView leader = leader(day);
			List<Integer> before = places(day);
			approveAsShown(day, leader, how);
			assertThat(day.now(leader).status()).isEqualTo(how);
			assertThat(rows(day)).last().satisfies((row) -> {
				assertThat(row.entry()).isEqualTo(leader.entry().toString());
				assertThat(row.place()).isNull();
				assertThat(row.status()).isEqualTo(how.name());
			});
			assertThat(this.entries.entry(leader.entry()).isEntered()).isEqualTo(how != PerformanceStatus.WITHDRAWN);
			approveAsShown(day, leader, PerformanceStatus.CLOSED);
			assertThat(places(day)).isEqualTo(before);
			assertThat(rows(day).get(0).entry()).isEqualTo(leader.entry().toString());
			assertThat(this.entries.entry(leader.entry()).isEntered()).isTrue();
		}
	}

	@Test
	void oneKindOfEndIsPutRightByAnother() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView first = day.callNext(1);
		this.run.end(first.id(), first.version(), PerformanceStatus.DISQUALIFIED, "Slip.", REFEREE);
		approveAsShown(day, first, PerformanceStatus.NOT_FINISHED);
		assertThat(rows(day).get(0).status()).isEqualTo("NOT_FINISHED");
	}

	@Test
	void aWrongWithdrawalIsUndoneAfterTheSegmentIsOpenAndTheNumberStays() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		PerformanceView second = day.performances(1).get(1);
		EntryView entry = this.entries.entry(second.entry());
		this.entries.withdraw(entry.id(), entry.version(), "Ill.", SECRETARY);
		day.skateNext(1);
		approveAsShown(day, second, PerformanceStatus.WAITING);
		assertThat(this.entries.entry(second.entry()).isEntered()).isTrue();
		assertThat(day.now(second)).satisfies((now) -> {
			assertThat(now.status()).isEqualTo(PerformanceStatus.WAITING);
			assertThat(now.startNumber()).isEqualTo(second.startNumber());
			assertThat(now.course().statusReason()).isEmpty();
		});
		assertThat(this.standings.latest(day.segment(1)).orElseThrow().standing()).satisfies((standing) -> {
			assertThat(standing.skated()).isEqualTo(1);
			assertThat(standing.starters()).isEqualTo(3);
		});
		assertThat(day.callNext(1).id()).isEqualTo(second.id());
	}

	@Test
	void aPerformanceThatWasEndedInsteadOfClosedGoesBackOnTheIceWithItsCards() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView first = day.callNext(1);
		day.sendAll(first);
		this.run.end(first.id(), day.now(first).version(), PerformanceStatus.NOT_FINISHED, "Slip.", REFEREE);
		assertRefused("performance-state", () -> propose(first, PerformanceStatus.WAITING));
		PerformanceView next = day.callNext(1);
		assertRefused("another-on-ice", () -> propose(first, PerformanceStatus.ON_ICE));
		day.sendAll(next);
		day.close(next);
		approveAsShown(day, first, PerformanceStatus.ON_ICE);
		assertThat(this.standings.result(day.segment(1)).orElseThrow().onIce()).isEqualTo(first.entry());
		day.close(first);
		assertThat(rows(day)).extracting(Standing.Row::status).containsOnly("SKATED");
	}

	@Test
	void theSamePersonNeverApprovesWhatTheyProposed() {
		SmallCompetition day = skated(false);
		CorrectionView proposed = propose(leader(day), PerformanceStatus.DISQUALIFIED);
		assertRefused("two-names-needed",
				() -> this.corrections.approve(proposed.id(), proposed.version(), ACCOUNTANT));
		assertThat(day.now(leader(day)).status()).isEqualTo(PerformanceStatus.CLOSED);
	}

	@Test
	void theStandAloneDisqualifiesNobodyWhoseCardsAreClosed() {
		SmallCompetition day = skated(false);
		PerformanceView leader = leader(day);
		assertRefused("status-needs-two", () -> this.run.end(leader.id(), leader.version(),
				PerformanceStatus.DISQUALIFIED, "Prop on the ice.", REFEREE));
	}

	@Test
	void aPostedResultIsCorrectedAndASignedOneOnlyAfterItWasOpenedAgain() {
		SmallCompetition day = skated(false);
		SegmentId segment = day.segment(1);
		PerformanceView leader = leader(day);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		approveAsShown(day, leader, PerformanceStatus.DISQUALIFIED);
		if (this.standings.result(segment).orElseThrow().state() == SegmentResultView.SegmentResultState.RUNNING) {
			this.publication.post(segment, version(segment), ACCOUNTANT);
		}
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
		assertRefused("result-official", () -> propose(leader, PerformanceStatus.CLOSED));
		this.publication.reopen(segment, version(segment), "The prop was allowed.", REFEREE);
		approveAsShown(day, leader, PerformanceStatus.CLOSED);
		assertThat(rows(day).get(0).entry()).isEqualTo(leader.entry().toString());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void aLaterSegmentThatIsOpenFollowsAndComesBack(boolean byPoints) {
		SmallCompetition day = skated(byPoints);
		PerformanceView leader = leader(day);
		day.open(2);
		approveAsShown(day, leader, PerformanceStatus.DISQUALIFIED);
		PerformanceView later = later(day, leader);
		assertThat(later.status()).isEqualTo(PerformanceStatus.DISQUALIFIED);
		assertRefused("status-follows", () -> propose(later, PerformanceStatus.WAITING));
		approveAsShown(day, leader, PerformanceStatus.CLOSED);
		assertThat(later(day, leader).status()).isEqualTo(PerformanceStatus.WAITING);
		day.skateRest(2);
		assertThat(rows(day)).extracting(Standing.Row::status).containsOnly("SKATED");
	}

	@Test
	void whoWasDisqualifiedSinceTheDrawDoesNotStart() {
		SmallCompetition day = skated(false);
		PerformanceView leader = leader(day);
		day.draw(2);
		approveAsShown(day, leader, PerformanceStatus.DISQUALIFIED);
		this.run.open(day.segment(2), REFEREE);
		assertThat(later(day, leader).status()).isEqualTo(PerformanceStatus.DISQUALIFIED);
		Agreement.check(this.context, day, "opened after the disqualification");
	}

	@Test
	void everyOpenPageShowsTheNewTruth() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateNext(1);
		PerformanceView second = day.callNext(1);
		this.run.end(second.id(), second.version(), PerformanceStatus.WITHDRAWN, "Slip.", REFEREE);
		Visitor accountant = Crew.visitor(this.context, Role.ACCOUNTANT);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String protests = "/desk/protests/" + day.segment(1);
		Visitor.Page form = accountant.open(protests + "/corrections/new/status?performance=" + second.id());
		assertThat(form.text()).contains("Still to skate, under its start number", "Did not finish")
			.doesNotContain("Back on the ice");
		Visitor.Page proposed = form.submit("main form", java.util.Map.of("performance", second.id().toString(),
				"status", "WAITING", "reason", "The manager withdrew another team."));
		assertThat(proposed.text()).contains("The correction is proposed", "withdrawn → still to skate");
		String correction = protests + "/corrections/" + this.corrections.ofSegment(day.segment(1)).get(0).id();
		referee.open(correction).press("form[action$=/approval]");
		String team = this.entries.entry(second.entry()).team().name();
		assertThat(referee.open("/desk/stand/" + day.segment(1)).document().select("#order li.next").text())
			.contains(team);
		assertThat(referee.open("/desk/sheet/" + day.segment(1)).text()).contains(team).doesNotContain("withdrawn");
		Visitor.Page results = referee.open("/desk/results/" + day.segment(1));
		assertThat(results.text()).doesNotContain("withdrawn, marks");
		String follow = "/follow/" + day.competition().slug() + "/" + day.event().slug();
		Visitor spectator = new Visitor(
				Integer.parseInt(this.context.getEnvironment().getRequiredProperty("local.server.port")));
		assertThat(spectator.open(follow + "/" + day.event().segments().get(0).slug()).text())
			.doesNotContain("Withdrawn")
			.contains("After 1 of 3 teams");
		assertThat(referee.open("/desk/entries/" + day.event().id()).text()).doesNotContain("withdrawn");
	}

	/** All three teams have the same marks, so nobody else's place moves. */
	@Test
	void whatWasCorrectedStandsOnTheOfficialResult() {
		SmallCompetition day = skated(false);
		SegmentId segment = day.segment(1);
		String team = rows(day).get(0).team();
		approveAsShown(day, leader(day), PerformanceStatus.DISQUALIFIED);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
		int official = this.standings.latest(segment).orElseThrow().number();
		String follow = "/follow/" + day.competition().slug() + "/" + day.event().slug() + "/"
				+ day.event().segments().get(0).slug();
		Visitor spectator = new Visitor(
				Integer.parseInt(this.context.getEnvironment().getRequiredProperty("local.server.port")));
		for (String page : List.of(follow, follow + "/versions/" + official)) {
			assertThat(spectator.open(page).document().select(".corrections").text())
				.contains(team + ", marks count became disqualified", "moved: " + team + " 1 → – ", "3 of 3")
				.doesNotContain("said so");
		}
		Elements finnish = spectator.open(follow + "?lang=fi")
			.document()
			.select(".corrections li > span:has(.note) > span:eq(0)");
		assertThat(finnish.text()).startsWith(team + ": hylätty, aiemmin arvosanat lasketaan (ehdotti ")
			.contains(", hyväksyi ");
		assertThat(finnish.hasAttr("lang")).isFalse();
		assertThat(spectator.open(follow + "/versions/3").document().select(".corrections")).isEmpty();
		assertThat(Crew.visitor(this.context, Role.REFEREE)
			.open("/desk/results/" + segment)
			.document()
			.select("section[aria-labelledby=corrections]")
			.text()).contains(team + ", marks count became disqualified", team + " 1 → –", "after 3 of 3 teams");
	}

	/** Propose, look at the effect, approve: what was shown is what comes. */
	private void approveAsShown(SmallCompetition day, PerformanceView performance, PerformanceStatus next) {
		CorrectionView proposed = propose(performance, next);
		ResultPreview.ResultEffect effect = this.corrections.effect(proposed.id());
		this.corrections.approve(proposed.id(), proposed.version(), REFEREE);
		ResultVersion version = this.standings.latest(performance.segment()).orElseThrow();
		assertThat(version.note()).contains(ACCOUNTANT.name(), REFEREE.name()).doesNotContain("said so");
		assertThat(version.standing().rows()).extracting(Standing.Row::team, Standing.Row::place)
			.containsExactlyElementsOf(effect.segment()
				.stream()
				.limit(version.standing().rows().size())
				.map((move) -> tuple(move.team(), move.after()))
				.toList());
		assertThat(rows(day)).extracting(Standing.Row::team, Standing.Row::place)
			.containsExactlyElementsOf(effect.event()
				.stream()
				.limit(rows(day).size())
				.map((move) -> tuple(move.team(), move.after()))
				.toList());
		Agreement.check(this.context, day, next + " by two");
	}

	private CorrectionView propose(PerformanceView performance, PerformanceStatus next) {
		return this.corrections.propose(new Corrections.ProposeCorrection(
				StatusCorrection.StatusAmendment.on(performance.id(), next), "The steward said so."), ACCOUNTANT);
	}

	private SmallCompetition skated(boolean byPoints) {
		SmallCompetition day = byPoints ? PointsCompetition.running(this.context, 3, 3)
				: SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateRest(1);
		return day;
	}

	private PerformanceView leader(SmallCompetition day) {
		String entry = rows(day).get(0).entry();
		return of(day, 1, entry);
	}

	private static PerformanceView later(SmallCompetition day, PerformanceView performance) {
		return of(day, 2, performance.entry().toString());
	}

	private static PerformanceView of(SmallCompetition day, int segment, String entry) {
		return day.performances(segment)
			.stream()
			.filter((one) -> one.entry().toString().equals(entry))
			.findFirst()
			.orElseThrow();
	}

	private List<Standing.Row> rows(SmallCompetition day) {
		return this.standings.latest(day.event().id()).orElseThrow().standing().rows();
	}

	private List<Integer> places(SmallCompetition day) {
		return rows(day).stream().map(Standing.Row::place).toList();
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow().version();
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
