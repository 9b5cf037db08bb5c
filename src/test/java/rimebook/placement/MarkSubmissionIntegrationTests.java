package rimebook.placement;

import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingPolicies;
import rimebook.panels.SeatView;
import rimebook.paper.PaperKeying;
import rimebook.performances.Amending;
import rimebook.performances.Amendments;
import rimebook.performances.CardBook;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.RimebookException;
import rimebook.shared.RuleViolationException;
import rimebook.tablets.JudgeTables;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.PlacementRules;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class MarkSubmissionIntegrationTests {

	private final Races races = new Races();

	private static final CardMarks CARD = new CardMarks(560, 570);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	@Autowired
	private JudgeTables tables;

	@Test
	void sameCardSentTwiceIsOneRowAndOneAnswer() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		MarkSubmission.SubmitCard card = new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), 1, CARD);
		CardBook.Acknowledgement first = day.send(card, day.seats().get(0));
		assertThat(day.send(card, day.seats().get(0))).isEqualTo(first);
		assertThat(rows(performance)).isOne();
	}

	@Test
	void aCardAsksTheDatabaseAsOftenInALargePanelAsInASmallOne() {
		assertThat(questions(9)).isEqualTo(questions(3)).isPositive();
	}

	private int questions(int judges) {
		SmallCompetition day = SmallCompetition.running(this.context, 2, judges);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		SeatView seat = day.seats().get(0);
		day.send(performance, seat, 1, CARD);
		return AskedByThisThread.during(() -> day.send(performance, seat, 2, CARD)).size();
	}

	@Test
	void sameCardIsAcknowledgedEvenAfterItsCardsWereClosed() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		MarkSubmission.SubmitCard card = new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), 1, CARD);
		CardBook.Acknowledgement first = day.send(card, day.seats().get(0));
		day.send(performance, day.seats().get(1), 1, CARD);
		day.send(performance, day.seats().get(2), 1, CARD);
		day.close(performance);
		assertThat(day.send(card, day.seats().get(0))).isEqualTo(first);
	}

	@Test
	void sameIdentityWithOtherContentIsRefusedAndChangesNothing() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		UUID id = UUID.randomUUID();
		day.send(new MarkSubmission.SubmitCard(id, performance.id(), 1, CARD), day.seats().get(0));
		assertRefused("card-content-differs", () -> day
			.send(new MarkSubmission.SubmitCard(id, performance.id(), 1, new CardMarks(560, 580)), day.seats().get(0)));
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(
					() -> day.send(new MarkSubmission.SubmitCard(id, performance.id(), 1, CARD), day.seats().get(1)))
			.matches((refused) -> refused.code().equals("card-content-differs"))
			.as("another seat's card is not told")
			.matches((refused) -> refused.received() == null);
		assertThat(rows(performance)).isOne();
	}

	@Test
	void laterSequenceReplacesTheCardAndEarlierOneIsRefused() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		SeatView seat = day.seats().get(0);
		day.send(performance, seat, 1, CARD);
		day.send(performance, seat, 2, new CardMarks(500, 510));
		assertRefused("card-sequence-taken", () -> day.send(performance, seat, 2, CARD));
		assertRefused("card-sequence-taken", () -> day.send(performance, seat, 1, CARD));
		assertThat(this.tables.tableOf(seat.id()).course().cards()).singleElement()
			.satisfies((card) -> assertThat(card.version().first()).isEqualTo(500));
	}

	@Test
	void cardsAreTakenOnlyWhileTheTeamIsOnTheIce() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView waiting = day.performances(1).get(0);
		assertRefused("performance-not-open", () -> day.send(waiting, day.seats().get(0), 1, CARD));
		PerformanceView performance = day.callNext(1);
		day.sendAll(performance);
		day.close(performance);
		assertRefused("card-closed", () -> day.send(performance, day.seats().get(0), 2, CARD));
	}

	@Test
	void seatOfAnotherPanelHasNoCardHere() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SmallCompetition other = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> day.send(performance, other.seats().get(0), 1, CARD))
			.matches((refused) -> refused.code().equals("performance-not-of-seat"));
		assertThat(rows(performance)).isZero();
	}

	/**
	 * No card that could not be tabulated is taken, from whatever it came; the reading of
	 * 0.0 is a policy of the event.
	 */
	@Test
	void zeroIsRefusedFromTabletAndPaperWhereItMeansNotSkated() {
		SmallCompetition day = whereZeroMeansNotSkated();
		day.open(1);
		PerformanceView performance = day.callNext(1);
		SeatView seat = day.seats().get(0);
		PaperKeying paper = this.context.getBean(PaperKeying.class);
		assertZeroRefused("first", () -> day.send(performance, seat, 1, new CardMarks(0, 200)));
		assertZeroRefused("second", () -> day.send(performance, seat, 1, new CardMarks(200, 0)));
		assertZeroRefused("second", () -> paper.key(performance.id(), seat.id(), MarkLine.card(new CardMarks(200, 0)),
				SmallCompetition.REFEREE));
		assertThat(rows(performance)).isZero();
		assertThat(this.tables.tableOf(seat.id()).decided().zeroMark()).isEqualTo(PlacementRules.ZeroMark.REFUSE);
		day.send(performance, seat, 1, new CardMarks(10, 10));
		day.send(performance, day.seats().get(1), 1, CARD);
		day.send(performance, day.seats().get(2), 1, CARD);
		day.close(performance);
		Amendments amendments = this.context.getBean(Amendments.class);
		assertZeroRefused("first",
				() -> amendments.apply(MarksAmendment.on(performance.id(), seat.id(), new CardMarks(0, 10)),
						new MarksAmendment(new CardMarks(10, 10)),
						new Amending.Approval("misread", Sentence.said("by two"), SmallCompetition.REFEREE)));
	}

	private SmallCompetition whereZeroMeansNotSkated() {
		JudgingPolicies usual = JudgingPolicies.usual();
		JudgingPolicies policies = new JudgingPolicies(usual.freeSkatingTieBreak(), usual.sharedOrdinals(),
				usual.equalJudgesInFavour(), PlacementRules.ZeroMark.REFUSE, usual.disqualifiedPlaces());
		return SmallCompetition.running(this.context, 2,
				new DraftEvent("Adult", new DraftEvent.Judging(JudgingMethod.MAJORITY, 3, "", policies, null, true),
						List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree())));
	}

	private static void assertZeroRefused(String field, Runnable act) {
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(act::run).satisfies((refusal) -> {
			assertThat(refusal.code()).isEqualTo("zero-mark");
			assertThat(refusal.field()).isEqualTo(field);
		});
	}

	@Test
	void sequenceOutOfRangeIsRefusedByName() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		for (int sequence : new int[] { 0, -1, 1001 }) {
			assertThatExceptionOfType(RuleViolationException.class)
				.isThrownBy(() -> day.send(performance, day.seats().get(0), sequence, CARD))
				.satisfies((refusal) -> assertThat(refusal.field()).isEqualTo("sequence"));
		}
	}

	@Test
	void seatSeesItsOwnCardsOnly() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		day.send(performance, day.seats().get(1), 1, CARD);
		assertThat(this.tables.tableOf(day.seats().get(0).id()).course().cards()).isEmpty();
		assertThat(this.tables.tableOf(day.seats().get(1).id()).course().cards()).hasSize(1);
	}

	@Test
	void closingNamesTheSeatsThatAreMissing() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceView performance = day.callNext(1);
		day.send(performance, day.seats().get(1), 1, CARD);
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> day.close(performance))
			.withMessageContaining("Judge 1")
			.withMessageContaining("Judge 3")
			.satisfies((refusal) -> assertThat(refusal.getMessage()).doesNotContain("Judge 2"));
		assertThat(day.now(performance).status()).isEqualTo(PerformanceStatus.ON_ICE);
	}

	@Test
	void cardSentWhileTheRefereeClosesIsEitherCountedOrRefusedNeverLost() throws Exception {
		for (SmallCompetition day : Races.days(this.context, 3)) {
			for (int round = 0; round < day.performances(1).size(); round++) {
				PerformanceView performance = day.callNext(1);
				day.sendAll(performance);
				SeatView seat = day.seats().get(0);
				Races.Ending ending = this.races.race(() -> day.send(performance, seat, 2, CARD),
						() -> day.close(performance));
				assertThat(ending.second()).isNull();
				assertThat(ending.refusals()).extracting(RimebookException::code).allMatch("card-closed"::equals);
				assertThat(rows(performance)).isEqualTo((ending.first() == null) ? 4 : 3);
			}
		}
	}

	private long rows(PerformanceView performance) {
		return this.database.sql("select count(*) from card_submission where performance_id = ?")
			.param(performance.id().value())
			.query(Long.class)
			.single();
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(ConflictException.class).isThrownBy(act::run)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
