package rimebook;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.clock.ClockView;
import rimebook.clock.PerformanceClock;
import rimebook.competition.SegmentId;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.draw.StartingOrderView;
import rimebook.performances.CardReopening;
import rimebook.performances.ClosedCards;
import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarksAmendment;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.published.Standing;
import rimebook.results.ResultPublication;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Two people act at the same moment, again and again: what one of them is told was done
 * is done, and what is refused has no effect.
 */
@WholeApplication
class RacesIntegrationTests {

	private static final Actor OTHER_REFEREE = new Actor("Ada Second", "referee", "other laptop");

	private static final CardMarks CARD = new CardMarks(500, 510);

	private static final CardMarks CHANGED = new CardMarks(520, 530);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private SegmentRun run;

	@Autowired
	private PerformanceClock clock;

	@Autowired
	private CardReopening reopening;

	@Autowired
	private ClosedCards closed;

	@Autowired
	private Standings standings;

	@Autowired
	private ResultPublication publication;

	@Autowired
	private Corrections corrections;

	private final Races races = new Races();

	@Test
	void ofTwoRefereesWhoCallOrCloseOneHasDoneIt() throws Exception {
		for (SmallCompetition day : Races.days(this.context, 3)) {
			for (PerformanceView waiting : day.performances(1)) {
				Races.Ending called = this.races.race(
						() -> this.run.call(waiting.id(), waiting.version(), SmallCompetition.REFEREE),
						() -> this.run.call(waiting.id(), waiting.version(), OTHER_REFEREE));
				assertThat(called.done()).isOne();
				assertThat(called.refusals()).allMatch(ConflictException.class::isInstance);
				PerformanceView onIce = day.now(waiting);
				day.sendAll(onIce);
				int version = day.now(onIce).version();
				Races.Ending closing = this.races.race(
						() -> this.run.close(onIce.id(), version, SmallCompetition.REFEREE),
						() -> this.run.close(onIce.id(), version, OTHER_REFEREE));
				assertThat(closing.done()).isOne();
				assertThat(closing.refusals()).allMatch(ConflictException.class::isInstance);
				assertThat(day.now(onIce).status()).isEqualTo(PerformanceStatus.CLOSED);
			}
			assertThat(this.standings.versions(day.segment(1))).hasSameSizeAs(day.performances(1));
		}
	}

	/** Whoever calls a number calls that of the order that is in force. */
	@Test
	void anOpenSegmentIsDrawnAgainBeforeItsFirstCallOrNotAtAll() throws Exception {
		StartingOrderDraw draw = this.context.getBean(StartingOrderDraw.class);
		SmallCompetition day = SmallCompetition.running(this.context, 6, 3);
		SegmentId segment = day.open(1);
		int called = 0;
		for (int round = 0; round < Races.ROUNDS; round++) {
			PerformanceView first = day.performances(1).get(0);
			String seed = "round " + round;
			Races.Ending both = this.races.race(
					() -> this.run.call(first.id(), first.version(), SmallCompetition.REFEREE),
					() -> draw.draw(new StartingOrderDraw.Order(segment, DrawMethod.WHOLE_FIELD, seed, 4, "Again."),
							OTHER_REFEREE));
			assertThat(both.done()).isPositive();
			assertThat(both.refusals()).extracting(RimebookException::code)
				.allMatch(List.of("stale-version", "draw-too-late")::contains);
			assertThat(day.performances(1)).extracting(PerformanceView::entry)
				.containsExactlyElementsOf(draw.ofSegment(segment)
					.orElseThrow()
					.starts()
					.stream()
					.map(StartingOrderView.Start::entry)
					.toList());
			PerformanceView now = day.now(first);
			if (now.isOnIce()) {
				called++;
				assertThat(now.startNumber()).isOne();
				this.run.takeBack(now.id(), now.version(), SmallCompetition.REFEREE);
			}
		}
		assertThat(called).as("the call was sometimes first").isPositive();
	}

	@Test
	void ofTwoRefereesWhoStartTheClockOneHasDoneIt() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		PerformanceId onIce = day.callNext(1).id();
		for (int round = 0; round < Races.ROUNDS; round++) {
			int seen = 2 * round;
			Races.Ending both = this.races.race(() -> this.clock.start(onIce, seen, SmallCompetition.REFEREE),
					() -> this.clock.start(onIce, seen, OTHER_REFEREE));
			assertThat(both.done()).isOne();
			assertThat(both.refusals()).allMatch(ConflictException.class::isInstance);
			ClockView started = this.clock.ofPerformance(onIce);
			assertThat(started.touches()).isEqualTo(seen + 1);
			assertThat(started.state()).isEqualTo(ClockView.ClockState.RUNNING);
			this.clock.takeBack(onIce, seen + 1, SmallCompetition.REFEREE);
		}
		assertThat(this.clock.ofPerformance(onIce).log()).hasSize(2 * Races.ROUNDS);
	}

	@Test
	void aClockThatRunsIsNeverThatOfClosedCards() throws Exception {
		int closed = 0;
		for (SmallCompetition day : Races.days(this.context, 3)) {
			for (int i = 0; i < day.performances(1).size(); i++) {
				PerformanceView onIce = day.callNext(1);
				day.seats().forEach((seat) -> day.send(onIce, seat, 1, CARD));
				int version = day.now(onIce).version();
				Races.Ending both = this.races.race(() -> this.clock.start(onIce.id(), 0, SmallCompetition.REFEREE),
						() -> this.run.close(onIce.id(), version, OTHER_REFEREE));
				assertThat(both.done()).isOne();
				assertThat(both.refusals()).allMatch(ConflictException.class::isInstance);
				if (both.first() == null) {
					this.clock.stop(onIce.id(), 1, SmallCompetition.REFEREE);
					day.close(onIce);
				}
				closed += (both.second() == null) ? 1 : 0;
			}
		}
		assertThat(closed).as("the closing was sometimes first").isBetween(1, Races.ROUNDS - 1);
	}

	@Test
	void aCardSentWhileTheCardsAreClosedCountsIfAndOnlyIfItWasAcknowledged() throws Exception {
		int taken = 0;
		for (SmallCompetition day : Races.days(this.context, 3)) {
			for (int i = 0; i < day.performances(1).size(); i++) {
				PerformanceView onIce = day.callNext(1);
				day.seats().forEach((seat) -> day.send(onIce, seat, 1, CARD));
				int version = day.now(onIce).version();
				Races.Ending both = this.races.race(() -> day.send(onIce, day.seats().get(0), 2, CHANGED),
						() -> this.run.close(onIce.id(), version, SmallCompetition.REFEREE));
				boolean acknowledged = both.first() == null;
				if (both.second() != null) {
					assertThat(both.second()).isInstanceOf(ConflictException.class);
					day.close(onIce);
				}
				CardMarks counts = acknowledged ? CHANGED : CARD;
				assertThat(cardsOf(day, onIce)).containsExactly(counts, CARD, CARD);
				assertThat(firstCardPublished(day.segment(1), onIce)).isEqualTo(counts);
				taken += acknowledged ? 1 : 0;
			}
		}
		assertThat(taken).as("the closing was sometimes later").isPositive();
	}

	@Test
	void aCardSentWhileOpenedCardsAreClosedAgainCountsIfAndOnlyIfItWasAcknowledged() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		day.skateNext(1);
		PerformanceView first = day.performances(1).get(0);
		int taken = 0;
		int sequence = 1;
		CardMarks counts = cardsOf(day, first).get(0);
		for (int round = 0; round < Races.ROUNDS; round++) {
			this.reopening.reopen(first.id(), day.now(first).version(), "Round " + round, SmallCompetition.REFEREE);
			int version = day.now(first).version();
			int next = sequence + 1;
			CardMarks changed = new CardMarks(100 + 10 * (round % 40), 300);
			Races.Ending both = this.races.race(() -> day.send(first, day.seats().get(0), next, changed),
					() -> this.run.close(first.id(), version, SmallCompetition.REFEREE));
			assertThat(both.second()).isNull();
			if (both.first() == null) {
				counts = changed;
				sequence = next;
				taken++;
			}
			assertThat(cardsOf(day, first)).first().isEqualTo(counts);
			assertThat(firstCardPublished(day.segment(1), first)).isEqualTo(counts);
		}
		assertThat(taken).as("the closing was sometimes later").isBetween(1, Races.ROUNDS);
	}

	@Test
	void cardsAreNeverOpenAgainOnceThoseOfALaterTeamAreClosed() throws Exception {
		int opened = 0;
		for (SmallCompetition day : Races.days(this.context, 3)) {
			day.skateNext(1);
			for (int i = 1; i < day.performances(1).size(); i++) {
				PerformanceView last = day.performances(1).get(i - 1);
				PerformanceView onIce = day.callNext(1);
				day.sendAll(onIce);
				int version = day.now(onIce).version();
				Races.Ending both = this.races.race(
						() -> this.reopening.reopen(last.id(), last.version(), "A slip", SmallCompetition.REFEREE),
						() -> this.run.close(onIce.id(), version, OTHER_REFEREE));
				assertThat(both.done()).isOne();
				assertThat(both.refusals()).allMatch(ConflictException.class::isInstance);
				if (both.first() == null) {
					opened++;
					day.close(last);
					day.close(onIce);
				}
			}
		}
		assertThat(opened).as("the opening was sometimes first").isBetween(1, Races.ROUNDS - 1);
	}

	@Test
	void anOfficialResultHasNoCorrectionThatIsUndecided() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		this.publication.post(segment, result(segment).version(), SmallCompetition.ACCOUNTANT);
		int official = 0;
		for (int round = 0; round < Races.ROUNDS; round++) {
			signAsReferee(segment);
			int version = result(segment).version();
			Corrections.ProposeCorrection proposal = proposal(day, round);
			Races.Ending both = this.races.race(
					() -> this.publication.sign(segment, version, Signatories.Signatory.ACCOUNTANT,
							SmallCompetition.ACCOUNTANT),
					() -> this.corrections.propose(proposal, SmallCompetition.ACCOUNTANT));
			boolean signed = result(segment).state() == SegmentResultView.SegmentResultState.OFFICIAL;
			List<CorrectionView> undecided = undecided(segment);
			assertThat(signed).isEqualTo(both.first() == null);
			assertThat(undecided).hasSize((both.second() == null) ? 1 : 0);
			assertThat(signed && !undecided.isEmpty()).as("official with an open correction").isFalse();
			assertThat(signed || !undecided.isEmpty()).as("one of the two was done").isTrue();
			official += signed ? 1 : 0;
			undecided.forEach((one) -> this.corrections.reject(one.id(), one.version(), "Not this one",
					SmallCompetition.REFEREE));
			if (signed) {
				this.publication.reopen(segment, result(segment).version(), "Next round", SmallCompetition.REFEREE);
			}
		}
		assertThat(official).as("the signature was sometimes first").isBetween(1, Races.ROUNDS);
	}

	@Test
	void aSignatureCoversTheMarksThatAreThereWhenTheCorrectionIsApproved() throws Exception {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		this.publication.post(segment, result(segment).version(), SmallCompetition.ACCOUNTANT);
		PerformanceView performance = day.performances(1).get(0);
		for (int round = 0; round < Races.ROUNDS; round++) {
			Corrections.ProposeCorrection proposal = proposal(day, round);
			CorrectionView correction = this.corrections.propose(proposal, SmallCompetition.ACCOUNTANT);
			int version = result(segment).version();
			Races.Ending both = this.races.race(
					() -> this.corrections.approve(correction.id(), correction.version(), SmallCompetition.REFEREE),
					() -> this.publication.sign(segment, version, Signatories.Signatory.ACCOUNTANT,
							SmallCompetition.ACCOUNTANT));
			assertThat(both.first()).isNull();
			assertThat(both.second()).as("what was signed is not what is there").isInstanceOf(RimebookException.class);
			assertThat(result(segment).signatures().accountant().at()).isNull();
			assertThat(cardsOf(day, performance)).first().isEqualTo(marks(round));
			assertThat(firstCardPublished(segment, performance)).isEqualTo(marks(round));
		}
	}

	private void signAsReferee(SegmentId segment) {
		if (result(segment).signatures().referee().at() == null) {
			this.publication.sign(segment, result(segment).version(), Signatories.Signatory.REFEREE,
					SmallCompetition.REFEREE);
		}
	}

	private static CardMarks marks(int round) {
		return new CardMarks(100 + 10 * (round % 20), 300);
	}

	private Corrections.ProposeCorrection proposal(SmallCompetition day, int round) {
		return new Corrections.ProposeCorrection(
				MarksAmendment.on(day.performances(1).get(0).id(), day.seats().get(0).id(), marks(round)),
				"Judge 1 typed another mark, round " + round);
	}

	private List<CorrectionView> undecided(SegmentId segment) {
		return this.corrections.ofSegment(segment)
			.stream()
			.filter((correction) -> correction.state() == CorrectionView.State.PROPOSED)
			.toList();
	}

	private SegmentResultView result(SegmentId segment) {
		return this.standings.result(segment).orElseThrow();
	}

	private List<CardMarks> cardsOf(SmallCompetition day, PerformanceView performance) {
		return this.closed.ofSegment(day.segment(1))
			.stream()
			.filter((one) -> one.id().equals(performance.id()))
			.map(ClosedCards.ClosedPerformance::cards)
			.findFirst()
			.orElseThrow();
	}

	private CardMarks firstCardPublished(SegmentId segment, PerformanceView performance) {
		ResultVersion latest = this.standings.latest(segment).orElseThrow();
		Standing.Card card = latest.standing()
			.rows()
			.stream()
			.filter((row) -> row.entry().equals(performance.entry().toString()))
			.findFirst()
			.orElseThrow()
			.cards()
			.get(0);
		return new CardMarks(card.first(), card.second());
	}

}
