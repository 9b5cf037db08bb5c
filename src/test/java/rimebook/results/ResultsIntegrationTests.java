package rimebook.results;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingPolicies;
import rimebook.competition.SegmentId;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.panels.SeatKind;
import rimebook.performances.Amending;
import rimebook.performances.Amendments;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.performances.StatusCorrection;
import rimebook.published.Standing;
import rimebook.published.StandingText;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class ResultsIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Standings standings;

	@Autowired
	private ResultPublication publication;

	@Autowired
	private JdbcClient database;

	@Test
	void everyClosedCardPublishesTheVersionThatThePureFunctionGives() {
		SmallCompetition day = SmallCompetition.running(this.context, 8, 5);
		SegmentId segment = day.open(1);
		List<EntryCards> skated = new ArrayList<>();
		for (int version = 1; version <= 8; version++) {
			PerformanceView performance = day.callNext(1);
			List<CardMarks> cards = day.sendAll(performance);
			day.close(performance);
			skated.add(EntryCards.skated(performance.entry().toString(), cards));
			ResultVersion published = this.standings.latest(segment).orElseThrow();
			assertThat(published.number()).isEqualTo(version);
			assertThat(published.standing().skated()).isEqualTo(version);
			assertThat(places(published.standing())).isEqualTo(
					places(PlacementTabulation.ofCards(PlacementRules.majority(SegmentKind.SHORT), skated).rows()));
		}
	}

	@Test
	void oneByOneEventIsTabulatedOneByOne() {
		DraftEvent draft = new DraftEvent("Adult", DraftEvent.Judging.by(JudgingMethod.ONE_BY_ONE, 5),
				List.of(CompetitionFixtures.aFree()))
			.signedAtOnce();
		SmallCompetition day = SmallCompetition.running(this.context, 5, draft);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		Standing standing = this.standings.latest(segment).orElseThrow().standing();
		assertThat(standing.method()).isEqualTo("ONE_BY_ONE");
		assertThat(standing.rows().get(0).figures()).extracting(Standing.Figure::code)
			.containsExactly("wins", "judges-in-favour");
	}

	@Test
	void eventCombinesBothSegmentsByFactoredPlaces() {
		SmallCompetition day = SmallCompetition.running(this.context, 6, 3);
		day.open(1);
		day.skateRest(1);
		SegmentId free = day.open(2);
		day.skateRest(2);
		Map<String, Integer> first = places(this.standings.latest(day.segment(1)).orElseThrow().standing());
		Map<String, Integer> second = places(this.standings.latest(free).orElseThrow().standing());
		Standing event = this.standings.latest(day.event().id()).orElseThrow().standing();
		assertThat(event.rows()).hasSize(6)
			.allSatisfy((row) -> assertThat(row.total())
				.isEqualTo(50 * first.get(row.entry()) + 100 * second.get(row.entry())));
		assertThat(event.rows()).isSortedAccordingTo((a, b) -> Integer.compare(a.total(), b.total()));
	}

	@Test
	void theDrawOfALaterSegmentSaysThatItWaitsForTheOneBefore() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		StartingOrderDraw draw = this.context.getBean(StartingOrderDraw.class);
		assertThat(draw.offer(day.segment(2)).refusal()).asString().contains("not finished");
		day.open(1);
		day.skateNext(1);
		assertThat(draw.offer(day.segment(2)).refusal()).asString().contains("not finished");
		day.skateNext(1);
		assertThat(draw.offer(day.segment(2)).refusal()).isNull();
	}

	/** Whatever was said to be possible on the way must leave room for what came. */
	@Test
	void whatIsStillPossibleHoldsTheEndFromTheFirstTeamOn() {
		SmallCompetition day = SmallCompetition.running(this.context, 6, 3);
		day.open(1);
		day.skateRest(1);
		day.open(2);
		day.skateRest(2);
		Map<String, Integer> event = places(this.standings.latest(day.event().id()).orElseThrow().standing());
		for (int segment = 1; segment <= 2; segment++) {
			List<ResultVersion> versions = this.standings.versions(day.segment(segment));
			Map<String, Integer> end = places(versions.get(0).standing());
			assertThat(outlook(versions.get(0)).chances()).isEmpty();
			for (ResultVersion version : versions.subList(1, versions.size())) {
				assertThat(outlook(version).chances()).hasSize(6).allSatisfy((chance) -> {
					assertThat(end.get(chance.entry())).isBetween(chance.segment().best(), chance.segment().worst());
					if (chance.event() != null) {
						assertThat(event.get(chance.entry())).isBetween(chance.event().best(), chance.event().worst());
					}
				});
			}
		}
		Standing.Outlook beforeTheLast = outlook(this.standings.version(day.segment(2), 5).orElseThrow());
		assertThat(beforeTheLast.chances()).extracting(Standing.Outlook.Chance::event).doesNotContainNull();
		assertThat(beforeTheLast.needs()).hasSize(3).first().asString().contains("win");
		assertThat(outlook(this.standings.latest(day.segment(1)).orElseThrow()).needs()).isEmpty();
	}

	private static Standing.Outlook outlook(ResultVersion version) {
		Standing.Outlook outlook = version.standing().outlook();
		return (outlook != null) ? outlook : new Standing.Outlook(List.of(), List.of(), List.of());
	}

	@Test
	void teamsToSkateAreListedAsWaitingInTheEvent() {
		SmallCompetition day = SmallCompetition.running(this.context, 4, 3);
		day.open(1);
		day.skateRest(1);
		day.open(2);
		day.skateNext(2);
		Standing event = this.standings.latest(day.event().id()).orElseThrow().standing();
		assertThat(event.rows()).extracting(Standing.Row::status).containsOnlyOnce("SKATED");
		assertThat(event.rows().get(0).status()).isEqualTo("SKATED");
		assertThat(event.isComplete()).isFalse();
	}

	@Test
	void withdrawnTeamHasNoPlaceAndNobodyMovesUpInTheSegmentBefore() {
		SmallCompetition day = SmallCompetition.running(this.context, 4, 3);
		day.open(1);
		day.skateRest(1);
		String leader = this.standings.latest(day.segment(1)).orElseThrow().standing().rows().get(0).entry();
		day.draw(2);
		EntryView entry = day.entries()
			.stream()
			.filter((one) -> one.id().toString().equals(leader))
			.findFirst()
			.orElseThrow();
		this.context.getBean(Entries.class).withdraw(entry.id(), entry.version(), "Two skaters ill.", SECRETARY);
		this.context.getBean(SegmentRun.class).open(day.segment(2), REFEREE);
		day.skateRest(2);
		Standing event = this.standings.latest(day.event().id()).orElseThrow().standing();
		assertThat(event.rows()).last().satisfies((row) -> {
			assertThat(row.entry()).isEqualTo(leader);
			assertThat(row.place()).isNull();
			assertThat(row.status()).isEqualTo("WITHDRAWN");
		});
		assertThat(event.rows().get(0).segmentPlaces().get(0)).isGreaterThan(1);
	}

	@Test
	void performanceThatEndsWithoutMarksIsAVersionToo() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		PerformanceView performance = day.callNext(1);
		this.context.getBean(SegmentRun.class)
			.end(performance.id(), performance.version(), PerformanceStatus.NOT_FINISHED, "Injury.", REFEREE);
		ResultVersion version = this.standings.latest(segment).orElseThrow();
		assertThat(version.cause()).isEqualTo(ResultVersion.Cause.STATUS);
		assertThat(version.standing().rows()).singleElement()
			.satisfies((row) -> assertThat(row.status()).isEqualTo("NOT_FINISHED"));
	}

	/**
	 * Where nobody moves up, a team disqualified last leaves its place empty in the end
	 * too.
	 */
	@Test
	void aDisqualifiedTeamCanLeaveItsPlaceEmptyInTheEvent() {
		JudgingPolicies usual = JudgingPolicies.usual();
		DraftEvent draft = new DraftEvent("Adult", new DraftEvent.Judging(JudgingMethod.MAJORITY, 3, "",
				new JudgingPolicies(usual.freeSkatingTieBreak(), usual.sharedOrdinals(), usual.equalJudgesInFavour(),
						usual.zeroMark(), DisqualifiedPlaces.LEAVE_GAPS),
				null, true), List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()));
		SmallCompetition day = SmallCompetition.running(this.context, 3, draft);
		day.open(1);
		day.skateRest(1);
		day.open(2);
		day.skateRest(2);
		String winner = this.standings.latest(day.event().id()).orElseThrow().standing().rows().get(0).entry();
		PerformanceView performance = day.performances(2)
			.stream()
			.filter((one) -> one.entry().toString().equals(winner))
			.findFirst()
			.orElseThrow();
		disqualify(performance);
		Standing event = this.standings.latest(day.event().id()).orElseThrow().standing();
		assertThat(event.rows()).extracting(Standing.Row::place).containsExactly(2, 3, null);
	}

	@Test
	void resultIsPostedOnlyWhenEverybodyHasSkated() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateNext(1);
		assertRefused("segment-not-complete", () -> this.publication.post(segment, version(segment), ACCOUNTANT));
		day.skateNext(1);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		assertThat(this.standings.result(segment).orElseThrow().postedAt()).isNotNull();
	}

	@Test
	void twoSignaturesOfTwoPeopleMakeItOfficial() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		assertRefused("result-state",
				() -> this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE));
		this.publication.post(segment, version(segment), ACCOUNTANT);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		assertRefused("already-signed",
				() -> this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, ACCOUNTANT));
		assertRefused("two-names-needed",
				() -> this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, REFEREE));
		assertThat(this.standings.latest(segment).orElseThrow().state())
			.isEqualTo(ResultVersion.ResultState.PROVISIONAL);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
		assertThat(this.standings.latest(segment).orElseThrow().state()).isEqualTo(ResultVersion.ResultState.OFFICIAL);
	}

	@Test
	void onePersonWithTwoRolesAndTwoNamesSignsOnce() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.seatInstead(SeatKind.REFEREE, "Kai Berg");
		SegmentId segment = day.open(1);
		day.skateRest(1);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE,
				new Actor("person:kai", "Kai Berg", "referee", "test"));
		assertRefused("two-names-needed", () -> this.publication.sign(segment, version(segment),
				Signatories.Signatory.ACCOUNTANT, new Actor("person:kai", "Kai Lind", "accountant", "elsewhere")));
		assertThat(this.standings.latest(segment).orElseThrow().state())
			.isEqualTo(ResultVersion.ResultState.PROVISIONAL);
	}

	@Test
	void signatureOnAnOlderLookIsRefused() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		int before = version(segment);
		this.publication.post(segment, before, ACCOUNTANT);
		assertRefused("stale-version",
				() -> this.publication.sign(segment, before, Signatories.Signatory.REFEREE, REFEREE));
	}

	@Test
	void officialResultChangesOnlyAfterItWasOpenedAgain() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = official(day);
		PerformanceView performance = day.performances(1).get(0);
		assertRefused("result-official", () -> disqualify(performance));
		assertThat(day.now(performance).status()).isEqualTo(PerformanceStatus.CLOSED);
		this.publication.reopen(segment, version(segment), "Ineligible skater found.", REFEREE);
		disqualify(performance);
		assertThat(this.standings.result(segment).orElseThrow().signatures().referee().name()).isEmpty();
		assertThat(this.standings.latest(segment).orElseThrow().state())
			.isEqualTo(ResultVersion.ResultState.PROVISIONAL);
	}

	@Test
	void competitionIsFinalOnceEverySegmentIsOfficial() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, new DraftEvent("Adult",
				DraftEvent.Judging.by(JudgingMethod.MAJORITY, 3), List.of(CompetitionFixtures.aFree()))
			.signedAtOnce());
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> day.move(CompetitionState.FINAL))
			.withMessageContaining("Adult, Free skating");
		official(day);
		day.move(CompetitionState.FINAL);
		assertThat(day.competition().state()).isEqualTo(CompetitionState.FINAL);
	}

	@Test
	void databaseRefusesToChangeAPublishedVersion() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateNext(1);
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql("update result_version set note = 'x' where scope_id = ?")
				.param(segment.value())
				.update());
		assertThatExceptionOfType(DataAccessException.class)
			.isThrownBy(() -> this.database.sql("delete from result_version where scope_id = ?")
				.param(segment.value())
				.update());
	}

	@Test
	void fingerprintIsThatOfTheStoredBody() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateNext(1);
		String body = this.database.sql("select body from result_version where scope_id = ?")
			.param(segment.value())
			.query(String.class)
			.single();
		assertThat(this.standings.latest(segment).orElseThrow().fingerprint())
			.isEqualTo(StandingText.fingerprint(body));
	}

	private void disqualify(PerformanceView performance) {
		this.context.getBean(Amendments.class)
			.apply(StatusCorrection.StatusAmendment.on(performance.id(), PerformanceStatus.DISQUALIFIED),
					new StatusCorrection.StatusAmendment(PerformanceStatus.CLOSED),
					new Amending.Approval("Prop on the ice", Sentence.said("by two"), REFEREE));
	}

	private SegmentId official(SmallCompetition day) {
		SegmentId segment = day.open(1);
		day.skateRest(1);
		this.publication.post(segment, version(segment), ACCOUNTANT);
		this.publication.sign(segment, version(segment), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(segment), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
		return segment;
	}

	private int version(SegmentId segment) {
		return this.standings.result(segment).orElseThrow().version();
	}

	private static Map<String, Integer> places(Standing standing) {
		Map<String, Integer> places = new HashMap<>();
		standing.rows().forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

	private static Map<String, Integer> places(List<PlacedEntry> rows) {
		Map<String, Integer> places = new HashMap<>();
		rows.forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
