package rimebook;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentId;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryImport;
import rimebook.entries.EntryView;
import rimebook.panels.Panels;
import rimebook.performances.CardReopening;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarksAmendment;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.remarks.Remarks;
import rimebook.results.ResultPublication;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

@WholeApplication
class EndOfCompetitionIntegrationTests {

	private static final Actor ADMINISTRATOR = new Actor("Una Fell", "administrator", "test");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Competitions competitions;

	@Autowired
	private Cancellations cancellations;

	@Autowired
	private Standings standings;

	@Autowired
	private ResultPublication publication;

	@Autowired
	private Protests protests;

	@Autowired
	private Corrections corrections;

	@Autowired
	private JdbcClient database;

	@Test
	void finalAndArchivedRefuseEveryActWithTheReason() {
		SmallCompetition day = oneSegment();
		official(day, 1);
		day.move(CompetitionState.FINAL);
		acts(day).forEach((act) -> assertRefused("competition-final", act));
		day.move(CompetitionState.ARCHIVED);
		acts(day).forEach((act) -> assertRefused("competition-archived", act));
		assertThatExceptionOfType(RimebookException.class).isThrownBy(acts(day).get(0)::call)
			.withMessageContaining("The competition is archived")
			.withMessageContaining("An administrator can take it back");
	}

	private List<ThrowingCallable> acts(SmallCompetition day) {
		SegmentId segment = day.segment(1);
		EntryView entry = day.entries().get(0);
		PerformanceView performance = day.performances(1).get(0);
		SegmentRun run = this.context.getBean(SegmentRun.class);
		CardMarks marks = new CardMarks(100, 100);
		return List.of(() -> this.publication.post(segment, version(day, 1), REFEREE),
				() -> this.publication.sign(segment, version(day, 1), Signatories.Signatory.REFEREE, REFEREE),
				() -> this.publication.reopen(segment, version(day, 1), "why", REFEREE),
				() -> this.corrections.propose(new Corrections.ProposeCorrection(
						MarksAmendment.on(performance.id(), day.seats().get(0).id(), marks), "why"), ACCOUNTANT),
				() -> file(day, ProtestView.ProtestCategory.CALCULATION, null),
				() -> this.context.getBean(Entries.class)
					.enter(new EnterTeam(day.event().id(), "Club", "Town", "Late", "", "late"), SECRETARY),
				() -> this.context.getBean(Entries.class).withdraw(entry.id(), entry.version(), "ill", SECRETARY),
				() -> this.context.getBean(StartingOrderDraw.class)
					.draw(new StartingOrderDraw.Order(segment, DrawMethod.WHOLE_FIELD, "seed", 4, "again"), REFEREE),
				() -> this.context.getBean(Panels.class).issueCodes(day.event().id(), REFEREE),
				() -> this.context.getBean(CardReopening.class)
					.reopen(performance.id(), performance.version(), "why", REFEREE),
				() -> this.context.getBean(Remarks.class)
					.note(performance.id(), Remarks.RemarkKind.FALL, "fall", REFEREE),
				() -> run.end(performance.id(), performance.version(), PerformanceStatus.DISQUALIFIED, "why", REFEREE),
				() -> run.call(performance.id(), performance.version(), REFEREE));
	}

	@Test
	void anImportIsRefusedAtTheEnd() {
		SmallCompetition day = oneSegment();
		official(day, 1);
		day.move(CompetitionState.FINAL);
		assertThatExceptionOfType(RimebookException.class)
			.isThrownBy(() -> this.context.getBean(EntryImport.class)
				.apply(day.competition().id(), "event,club,town,team,spoken_as\nJunior,C,T,N,\n",
						EntryImport.Answers.NONE, SECRETARY))
			.withMessageContaining("The competition is final");
	}

	@Test
	void anAdministratorTakesItBackStepByStepWithAReasonOnRecord() {
		SmallCompetition day = oneSegment();
		official(day, 1);
		day.move(CompetitionState.FINAL);
		day.move(CompetitionState.ARCHIVED);
		CompetitionView archived = day.competition();
		assertRefused("field-missing",
				() -> this.competitions.takeBack(archived.id(), archived.version(), " ", ADMINISTRATOR));
		CompetitionView last = this.competitions.takeBack(archived.id(), archived.version(), "A sum is wrong.",
				ADMINISTRATOR);
		assertThat(last.state()).isEqualTo(CompetitionState.FINAL);
		CompetitionView running = this.competitions.takeBack(last.id(), last.version(), "A sum is wrong.",
				ADMINISTRATOR);
		assertThat(running.state()).isEqualTo(CompetitionState.RUNNING);
		assertRefused("competition-not-final",
				() -> this.competitions.takeBack(running.id(), running.version(), "why", ADMINISTRATOR));
		this.publication.reopen(day.segment(1), version(day, 1), "A sum is wrong.", REFEREE);
		assertThat(this.database
			.sql("select count(*) from record_line where action = 'competition.taken-back' and subject_id = ?"
					+ " and reason = 'A sum is wrong.'")
			.param(running.id().toString())
			.query(Integer.class)
			.single()).isEqualTo(2);
	}

	@Test
	void finalWaitsForWhatIsUndecided() {
		SmallCompetition day = oneSegment();
		official(day, 1);
		ProtestView protest = file(day, ProtestView.ProtestCategory.CALCULATION, null);
		assertNotFinal(day, "A protest of Junior, Short programme is not decided yet.");
		this.protests.decide(protest.id(), protest.version(), false, "It is right.", REFEREE);
		day.move(CompetitionState.FINAL);
	}

	@Test
	void finalWaitsForUndecidedCorrections() {
		SmallCompetition day = oneSegment();
		skated(day, 1);
		CorrectionView proposed = propose(day);
		assertNotFinal(day, "A correction of Junior, Short programme is not decided yet.");
		this.corrections.reject(proposed.id(), proposed.version(), "It is right.", REFEREE);
		official(day, 1);
		day.move(CompetitionState.FINAL);
	}

	@Test
	void anEventWithoutTeamsHoldsNothingBack() {
		SmallCompetition day = oneSegment();
		this.competitions.addEvent(day.competition().id(), CompetitionFixtures.anEvent("Nobody came", 3), SECRETARY);
		official(day, 1);
		day.move(CompetitionState.FINAL);
		assertThat(day.competition().state()).isEqualTo(CompetitionState.FINAL);
	}

	@Test
	void aCancelledEventTakesNothingWaitsForNothingAndComesBack() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		assertNotFinal(day, "is not official yet.");
		this.cancellations.cancel(day.event().id(), "The ice melted.", SECRETARY);
		assertRefused("event-cancelled", () -> day.draw(1));
		assertRefused("event-cancelled", () -> this.context.getBean(SegmentRun.class).open(day.segment(1), REFEREE));
		assertRefused("event-cancelled",
				() -> this.context.getBean(Panels.class).issueCodes(day.event().id(), REFEREE));
		assertRefused("already-cancelled",
				() -> this.cancellations.cancel(day.event().id(), "The ice melted.", SECRETARY));
		Instant cancelled = Objects.requireNonNull(day.event().cancellation()).since();
		this.cancellations.bringBack(day.event().id(), SECRETARY);
		assertThat(this.cancellations.tookPlace(day.event(), cancelled.minusMillis(1))).isTrue();
		assertThat(this.cancellations.tookPlace(day.event(), cancelled)).isFalse();
		assertThat(this.cancellations.tookPlace(day.event(), Instant.now().plusSeconds(1))).isTrue();
		day.open(1);
		this.cancellations.cancel(day.event().id(), "The ice melted.", SECRETARY);
		day.move(CompetitionState.FINAL);
		assertRefused("competition-final", () -> this.cancellations.bringBack(day.event().id(), SECRETARY));
	}

	@Test
	void aCancelledSegmentFallsOutOfTheResultAndComesBack() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		official(day, 1);
		assertThat(eventState(day)).isEqualTo(ResultVersion.ResultState.PROVISIONAL);
		this.cancellations.cancel(day.segment(2), "A power cut.", SECRETARY);
		assertThat(eventState(day)).isEqualTo(ResultVersion.ResultState.OFFICIAL);
		assertThat(this.standings.latest(day.event().id()).orElseThrow().standing().segments()).hasSize(1);
		assertRefused("segment-cancelled", () -> day.draw(2));
		assertRefused("last-segment", () -> this.cancellations.cancel(day.segment(1), "why", SECRETARY));
		this.cancellations.bringBack(day.segment(2), SECRETARY);
		assertThat(eventState(day)).isEqualTo(ResultVersion.ResultState.PROVISIONAL);
		day.open(2);
		assertThat(this.standings.latest(day.event().id()).orElseThrow().standing().segments()).hasSize(2);
	}

	@Test
	void whatWasDrawnWithoutASegmentKeepsItAway() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		this.cancellations.cancel(day.segment(1), "A power cut.", SECRETARY);
		this.context.getBean(StartingOrderDraw.class)
			.draw(new StartingOrderDraw.Order(day.segment(2), DrawMethod.WHOLE_FIELD, "seed", 4, ""), REFEREE);
		assertRefused("cancellation-refused", () -> this.cancellations.bringBack(day.segment(1), SECRETARY));
		this.context.getBean(SegmentRun.class).open(day.segment(2), REFEREE);
		official(day, 2);
		day.move(CompetitionState.FINAL);
	}

	@Test
	void nothingIsCancelledWhileItIsSkatedOrOnceItIsSigned() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView called = day.callNext(1);
		assertRefused("cancellation-refused", () -> this.cancellations.cancel(day.segment(1), "why", SECRETARY));
		this.context.getBean(SegmentRun.class).takeBack(called.id(), called.version(), REFEREE);
		this.cancellations.cancel(day.segment(1), "why", SECRETARY);
		this.cancellations.bringBack(day.segment(1), SECRETARY);
		day.skateRest(1);
		sign(day, 1);
		assertRefused("cancellation-refused", () -> this.cancellations.cancel(day.event().id(), "why", SECRETARY));
	}

	@Test
	void aTeamWithdrawsFromWhatIsLeftOfItsEvent() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateNext(1);
		this.cancellations.cancel(day.segment(1), "A power cut.", SECRETARY);
		EntryView entry = day.entries().get(0);
		this.context.getBean(Entries.class).withdraw(entry.id(), entry.version(), "ill", SECRETARY);
		assertThat(day.entries().get(0).isEntered()).isFalse();
	}

	@Test
	void onlyWhatNothingHangsOnIsRemoved() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		assertRefused("removal-refused", () -> this.cancellations.remove(day.event().id(), SECRETARY));
		EventView spare = this.competitions.addEvent(day.competition().id(), CompetitionFixtures.anEvent("Spare", 3),
				SECRETARY);
		EventView shorter = this.cancellations.remove(spare.segments().get(1).id(), SECRETARY);
		assertThat(shorter.segments()).hasSize(1);
		assertRefused("last-segment", () -> this.cancellations.remove(shorter.segments().get(0).id(), SECRETARY));
		this.cancellations.remove(spare.id(), SECRETARY);
		assertThat(this.competitions.events(day.competition().id())).extracting(EventView::name)
			.containsExactly("Junior");
	}

	@Test
	void aPostedResultThatChangesIsPostedAnewWithItsOwnTime() {
		SmallCompetition day = oneSegment();
		skated(day, 1);
		this.publication.post(day.segment(1), version(day, 1), ACCOUNTANT);
		CorrectionView proposed = propose(day);
		this.corrections.approve(proposed.id(), proposed.version(), REFEREE);
		sign(day, 1);
		String page = "/follow/" + day.competition().slug() + "/" + day.event().slug() + "/"
				+ day.event().segments().get(0).slug();
		Visitor anybody = new Visitor(
				Integer.parseInt(this.context.getEnvironment().getRequiredProperty("local.server.port")));
		assertThat(anybody.open(page).document().select(".posted").text()).startsWith("Posted ")
			.doesNotContain("Cards were", "state of a team");
		this.publication.reopen(day.segment(1), version(day, 1), "Ineligible skater.", REFEREE);
		List<SegmentResultView.Posting> postings = this.standings.postings(day.segment(1));
		assertThat(postings).extracting(SegmentResultView.Posting::changed)
			.satisfiesExactly((first) -> assertThat(first).isEmpty(),
					(second) -> assertThat(second).startsWith("Corrected: "),
					(third) -> assertThat(third).isEqualTo("Opened again: Ineligible skater."));
		assertThat(postings).extracting(SegmentResultView.Posting::postedBy)
			.containsExactly(ACCOUNTANT.name(), REFEREE.name(), REFEREE.name());
		assertThat(postings).allSatisfy((posting) -> {
			assertThat(posting.conductUntil()).isEqualTo(posting.postedAt().plus(30, ChronoUnit.MINUTES));
			assertThat(posting.calculationUntil()).isEqualTo(posting.postedAt().plus(24, ChronoUnit.HOURS));
		});
		assertThat(this.standings.result(day.segment(1)).orElseThrow().postedAt())
			.isEqualTo(postings.get(2).postedAt());
	}

	@Test
	void aProtestIsTimedFromWhatItIsAgainst() {
		SmallCompetition day = oneSegment();
		skated(day, 1);
		posted(day, 1, Instant.now().minus(40, ChronoUnit.MINUTES));
		posted(day, 90, Instant.now());
		assertThat(against(day, 1).state()).isEqualTo(ProtestView.State.REFUSED);
		assertThat(against(day, 90).state()).isEqualTo(ProtestView.State.FILED);
		assertThat(file(day, ProtestView.ProtestCategory.CONDUCT, null).claim().posting()).isEqualTo(90);
		assertRefused("posting-unknown", () -> against(day, 17));
	}

	private ProtestView against(SmallCompetition day, int posting) {
		return this.protests.file(
				new Protests.FileProtest(day.segment(1), new ProtestView.Claim(day.entries().get(0).id(),
						ProtestView.ProtestCategory.CONDUCT, "They were late.", posting), "Mira Sund", null),
				SECRETARY);
	}

	@Test
	void anEarlierTimeNeedsASecondNameOnceTheTimeIsOver() {
		SmallCompetition day = oneSegment();
		skated(day, 1);
		posted(day, 1, Instant.now().minus(40, ChronoUnit.MINUTES));
		Instant inTime = Instant.now().minus(20, ChronoUnit.MINUTES);
		ProtestView claimed = file(day, ProtestView.ProtestCategory.CONDUCT, inTime);
		assertThat(claimed.state()).isEqualTo(ProtestView.State.UNCONFIRMED);
		assertRefused("protest-unconfirmed",
				() -> this.protests.decide(claimed.id(), claimed.version(), true, "why", REFEREE));
		Actor renamed = new Actor(SECRETARY.id(), "Another Name", "referee", "test");
		assertRefused("two-names-needed",
				() -> this.protests.confirm(claimed.id(), claimed.version(), true, "I saw it.", renamed));
		ProtestView filed = this.protests.confirm(claimed.id(), claimed.version(), true, "I saw it.", REFEREE);
		assertThat(filed.state()).isEqualTo(ProtestView.State.FILED);
		assertThat(filed.filing().confirmedBy()).isEqualTo(REFEREE.name());
		ProtestView other = file(day, ProtestView.ProtestCategory.CONDUCT, inTime);
		assertRefused("field-missing", () -> this.protests.confirm(other.id(), other.version(), false, "", REFEREE));
		ProtestView refused = this.protests.confirm(other.id(), other.version(), false, "I was there.", REFEREE);
		assertThat(refused.state()).isEqualTo(ProtestView.State.REFUSED);
		assertThat(refused.decision().grounds())
			.hasToString("Not confirmed that it was handed in within the time: I was there.");
	}

	@Test
	void aSignatureWaitsForProtestsUnlessTheEventSaysOtherwise() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, waiting());
		day.open(1);
		day.skateRest(1);
		this.publication.post(day.segment(1), version(day, 1), ACCOUNTANT);
		assertThat(day.event().judging().signatureWaits()).isTrue();
		assertRefused("signature-held-back",
				() -> this.publication.sign(day.segment(1), version(day, 1), Signatories.Signatory.REFEREE, REFEREE));
		posted(day, 98, Instant.now().minus(31, ChronoUnit.MINUTES));
		this.publication.sign(day.segment(1), version(day, 1), Signatories.Signatory.REFEREE, REFEREE);
	}

	private static DraftEvent waiting() {
		return new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 3),
				List.of(CompetitionFixtures.aShort()));
	}

	private SmallCompetition oneSegment() {
		return SmallCompetition.running(this.context, 2, waiting().signedAtOnce());
	}

	private void skated(SmallCompetition day, int position) {
		if (day.performances(position).isEmpty()) {
			day.open(position);
		}
		day.skateRest(position);
	}

	private void official(SmallCompetition day, int position) {
		skated(day, position);
		sign(day, position);
	}

	private void sign(SmallCompetition day, int position) {
		SegmentId segment = day.segment(position);
		if (this.standings.postings(segment).isEmpty()) {
			this.publication.post(segment, version(day, position), ACCOUNTANT);
		}
		this.publication.sign(segment, version(day, position), Signatories.Signatory.REFEREE, REFEREE);
		this.publication.sign(segment, version(day, position), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
	}

	/** As if it had been posted at that time. */
	private void posted(SmallCompetition day, int number, Instant at) {
		if (this.standings.postings(day.segment(1)).isEmpty()) {
			this.database.sql("update segment_result set state = 'POSTED' where segment_id = ?")
				.param(day.segment(1).value())
				.update();
		}
		this.database.sql("insert into result_posting values (?, ?, ?, ?, 'Bo Tally', '', ?, ?)")
			.params(UUID.randomUUID(), day.segment(1).value(), number, utc(at), utc(at.plus(30, ChronoUnit.MINUTES)),
					utc(at.plus(24, ChronoUnit.HOURS)))
			.update();
	}

	private static OffsetDateTime utc(Instant instant) {
		return instant.atOffset(ZoneOffset.UTC);
	}

	private CorrectionView propose(SmallCompetition day) {
		return this.corrections.propose(new Corrections.ProposeCorrection(
				MarksAmendment.on(day.performances(1).get(0).id(), day.seats().get(0).id(), new CardMarks(100, 100)),
				"Typed one key off."), ACCOUNTANT);
	}

	private ProtestView file(SmallCompetition day, ProtestView.ProtestCategory category, @Nullable Instant handedIn) {
		return this.protests.file(new Protests.FileProtest(day.segment(1),
				new ProtestView.Claim(day.entries().get(0).id(), category, "They were late.", 0), "Mira Sund",
				handedIn), SECRETARY);
	}

	private ResultVersion.ResultState eventState(SmallCompetition day) {
		return this.standings.latest(day.event().id()).orElseThrow().state();
	}

	private int version(SmallCompetition day, int position) {
		return this.standings.result(day.segment(position)).orElseThrow().version();
	}

	private static void assertNotFinal(SmallCompetition day, String sentence) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(() -> day.move(CompetitionState.FINAL))
			.withMessageContaining(sentence);
	}

	private static void assertRefused(String code, ThrowingCallable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
