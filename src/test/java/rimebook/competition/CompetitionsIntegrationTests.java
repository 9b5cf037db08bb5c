package rimebook.competition;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import jakarta.persistence.EntityManager;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.data.jpa.test.autoconfigure.DataJpaTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;

import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Ids;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.SegmentRules;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.competition.CompetitionFixtures.SECRETARY;
import static rimebook.competition.CompetitionFixtures.aCompetition;
import static rimebook.competition.CompetitionFixtures.aFree;
import static rimebook.competition.CompetitionFixtures.aShort;
import static rimebook.competition.CompetitionFixtures.anEvent;

@DataJpaTest(showSql = false)
@RecordApplicationEvents
@Import({ CompetitionModule.class, CompetitionsIntegrationTests.Outside.class })
class CompetitionsIntegrationTests {

	@Autowired
	private RuleSets ruleSets;

	@Autowired
	private Competitions competitions;

	@Autowired
	private EntityManager entityManager;

	@Autowired
	private Veto veto;

	@Autowired
	private ApplicationEvents published;

	@Test
	void anEventKeepsTheRuleSetOfItsPoints() {
		DraftEvent.PointsChoice senior = new DraftEvent.PointsChoice("synchronized-2025-26", "senior");
		EventView event = this.competitions.addEvent(planned().id(), points("Senior", senior), SECRETARY);
		EventView found = this.competitions.event(event.id());
		assertThat(found.isJudgedByPoints()).isTrue();
		assertThat(found.judging().judges()).isEqualTo(8);
		assertThat(found.judging().points()).isEqualTo(senior);
		assertThat(found.draft()).isEqualTo(points("Senior", senior));
		assertThat(this.ruleSets.of(found, found.segments().get(1)).components())
			.extracting(SegmentRules.ComponentRule::factor)
			.containsExactly(267, 267, 267);
	}

	@Test
	void refusesALevelForWhichTheRuleSetHasNoFactors() {
		CompetitionId competition = planned().id();
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.competitions.addEvent(competition,
					points("Novice", new DraftEvent.PointsChoice("synchronized-2025-26", "novice")), SECRETARY))
			.withMessageContaining("senior, junior");
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.competitions.addEvent(competition,
					points("Novice", new DraftEvent.PointsChoice("of-tomorrow", "senior")), SECRETARY))
			.withMessageContaining("no rule set 'of-tomorrow'");
	}

	private static DraftEvent points(String name, DraftEvent.PointsChoice choice) {
		return new DraftEvent(name, DraftEvent.Judging.byPoints(8, choice), List.of(aShort(), aFree()));
	}

	@Test
	void keepsWhatWasWrittenDown() {
		CompetitionView created = this.competitions.create(aCompetition("Frostlight Trophy"), SECRETARY);
		assertThat(this.competitions.competition(created.id())).isEqualTo(created);
		assertThat(this.competitions.bySlug("frostlight-trophy")).isEqualTo(created);
		assertThat(created.state()).isEqualTo(CompetitionState.PLANNED);
		assertThat(this.competitions.all()).contains(created);
	}

	@Test
	void givesEqualNamesTheirOwnAddress() {
		this.competitions.create(aCompetition("Frostlight Trophy"), SECRETARY);
		CompetitionView second = this.competitions.create(aCompetition("Frostlight Trophy"), SECRETARY);
		assertThat(second.slug()).isEqualTo("frostlight-trophy-2");
	}

	@Test
	void saysWhatIsNotThere() {
		UUID nowhere = UUID.randomUUID();
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> this.competitions.competition(new CompetitionId(nowhere)));
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> this.competitions.segment(new SegmentId(nowhere)));
		assertThatExceptionOfType(NotFoundException.class)
			.isThrownBy(() -> this.competitions.copyEvent(new EventId(nowhere), "Copy", SECRETARY));
	}

	@Test
	void changesFactsAndCountsTheVersion() {
		CompetitionView planned = planned();
		CompetitionView changed = this.competitions.change(planned.id(), planned.version(), aCompetition("Rimelight"),
				SECRETARY);
		assertThat(changed.name()).isEqualTo("Rimelight");
		assertThat(changed.slug()).isEqualTo(planned.slug());
		assertThat(changed.version()).isGreaterThan(planned.version());
	}

	@Test
	void refusesAStaleChange() {
		CompetitionView planned = planned();
		this.competitions.change(planned.id(), planned.version(), aCompetition("Rimelight"), SECRETARY);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(
					() -> this.competitions.change(planned.id(), planned.version(), aCompetition("Other"), SECRETARY))
			.extracting(ConflictException::code)
			.isEqualTo("stale-version");
	}

	@Test
	void opensEntriesOnceThereIsAnEvent() {
		CompetitionView planned = planned();
		assertThat(this.competitions.moves(planned.id())).singleElement()
			.satisfies((move) -> assertThat(move.refusal()).asString().contains("no event yet"));
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> move(planned, CompetitionState.ENTRIES_OPEN))
			.withMessageContaining("no event yet");
		this.competitions.addEvent(planned.id(), anEvent("Junior", 7), SECRETARY);
		assertThat(move(planned, CompetitionState.ENTRIES_OPEN).state()).isEqualTo(CompetitionState.ENTRIES_OPEN);
	}

	@Test
	void refusesAMoveThatCannotFollow() {
		assertThatExceptionOfType(ConflictException.class).isThrownBy(() -> move(planned(), CompetitionState.RUNNING))
			.withMessage("The competition is planned; from there it cannot become running.");
	}

	@Test
	void asksOthersBeforeAMove() {
		CompetitionView planned = planned();
		this.competitions.addEvent(planned.id(), anEvent("Junior", 7), SECRETARY);
		this.veto.reason = "The rink is closed.";
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> move(planned, CompetitionState.ENTRIES_OPEN))
			.withMessage("The rink is closed.");
	}

	@Test
	void changesNothingOnceFinal() {
		CompetitionView end = finished();
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.competitions.change(end.id(), end.version(), aCompetition("Other"), SECRETARY));
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.competitions.addEvent(end.id(), anEvent("Adult", 5), SECRETARY));
	}

	@Test
	void keepsEventsInOrderWithTheirSegments() {
		CompetitionId id = planned().id();
		EventView junior = this.competitions.addEvent(id, anEvent("Junior", 7), SECRETARY);
		EventView adult = this.competitions.addEvent(id, anEvent("Adult", 5), SECRETARY);
		assertThat(this.competitions.events(id)).containsExactly(junior, adult);
		assertThat(this.competitions.eventBySlug(id, "adult")).isEqualTo(adult);
		SegmentView free = junior.segments().get(1);
		assertThat(this.competitions.segment(free.id())).isEqualTo(free);
		assertThat(this.competitions.eventOf(free.id())).isEqualTo(junior);
		assertThat(junior.previousSegments(free.id())).containsExactly(junior.segments().get(0));
		assertThat(junior.isLastSegment(free.id())).isTrue();
	}

	@Test
	void refusesTwoEventsOfOneName() {
		CompetitionId id = planned().id();
		this.competitions.addEvent(id, anEvent("Junior", 7), SECRETARY);
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> this.competitions.addEvent(id, anEvent("JUNIOR", 7), SECRETARY))
			.extracting(RuleViolationException::code)
			.isEqualTo("event-name-taken");
	}

	@Test
	void keepsTheIdentityOfASegmentWhoseNameStays() {
		EventView junior = this.competitions.addEvent(planned().id(), anEvent("Junior", 7), SECRETARY);
		DraftEvent swapped = new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.ONE_BY_ONE, 5),
				List.of(aFree(), aShort()));
		EventView changed = this.competitions.changeEvent(junior.id(), junior.version(), swapped, SECRETARY);
		assertThat(changed.segments()).extracting(SegmentView::id)
			.containsExactly(junior.segments().get(1).id(), junior.segments().get(0).id());
		assertThat(changed.draft()).isEqualTo(swapped);
	}

	@Test
	void dropsAndAddsSegments() {
		EventView junior = this.competitions.addEvent(planned().id(), anEvent("Junior", 7), SECRETARY);
		EventView one = this.competitions.changeEvent(junior.id(), junior.version(), withSegments(aFree()), SECRETARY);
		EventView two = this.competitions.changeEvent(one.id(), one.version(), withSegments(aFree(), aShort()),
				SECRETARY);
		assertThat(one.segments()).extracting(SegmentView::id).containsExactly(junior.segments().get(1).id());
		assertThat(two.segments()).extracting(SegmentView::name).containsExactly("Free skating", "Short programme");
		assertThat(this.competitions.event(two.id())).isEqualTo(two);
	}

	@Test
	void countsTheVersionOfAnEventWhenOnlyASegmentChanges() {
		EventView junior = this.competitions.addEvent(planned().id(), anEvent("Junior", 7), SECRETARY);
		this.entityManager.flush();
		this.entityManager.clear();
		DraftEvent.DraftSegment longer = new DraftEvent.DraftSegment("Free skating", SegmentKind.FREE, 100, 250, 10);
		this.competitions.changeEvent(junior.id(), junior.version(), withSegments(aShort(), longer), SECRETARY);
		assertThatExceptionOfType(ConflictException.class).isThrownBy(
				() -> this.competitions.changeEvent(junior.id(), junior.version(), withSegments(aFree()), SECRETARY));
	}

	@Test
	void keepsALongestWithoutAShortestAndBothApart() {
		EventView junior = this.competitions.addEvent(planned().id(), anEvent("Junior", 7), SECRETARY);
		DraftEvent apart = withSegments(
				new DraftEvent.DraftSegment("Short programme", SegmentKind.SHORT, 50, 170, 0, null),
				new DraftEvent.DraftSegment("Free skating", SegmentKind.FREE, 100, 240, 10, 30));
		this.competitions.changeEvent(junior.id(), junior.version(), apart, SECRETARY);
		this.entityManager.flush();
		this.entityManager.clear();
		assertThat(this.competitions.event(junior.id()).draft().segments()).isEqualTo(apart.segments());
	}

	@Test
	void asksOthersBeforeAnEventIsChanged() {
		EventView junior = this.competitions.addEvent(planned().id(), anEvent("Junior", 7), SECRETARY);
		this.veto.reason = "The short programme has been drawn.";
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(
					() -> this.competitions.changeEvent(junior.id(), junior.version(), anEvent("Junior", 5), SECRETARY))
			.withMessage("The short programme has been drawn.");
	}

	@Test
	void copiesAnEventUnderAnotherName() {
		EventView junior = this.competitions.addEvent(planned().id(), anEvent("Junior", 7), SECRETARY);
		EventView copy = this.competitions.copyEvent(junior.id(), "Senior", SECRETARY);
		assertThat(copy.draft()).isEqualTo(junior.draft().named("Senior"));
		assertThat(copy.listing().position()).isEqualTo(2);
		assertThat(copy.segments().get(0).id()).isNotEqualTo(junior.segments().get(0).id());
	}

	@Test
	void putsTogetherTheRulesOfASegment() {
		DraftEvent even = new DraftEvent("Junior",
				new DraftEvent.Judging(JudgingMethod.MAJORITY, 4, "Judge ill", JudgingPolicies.usual(), null, true),
				List.of(aFree()));
		EventView event = this.competitions.addEvent(planned().id(), even, SECRETARY);
		assertThat(event.rules(SegmentKind.SHORT).cardTieBreak()).isEqualTo(PlacementRules.CardTieBreak.FIRST_MARK);
		assertThat(event.rules(SegmentKind.FREE).cardTieBreak()).isEqualTo(PlacementRules.CardTieBreak.SECOND_MARK);
		assertThat(event.rules(SegmentKind.FREE).evenPanel()).isEqualTo(PlacementRules.EvenPanel.ALLOW);
	}

	@Test
	void putsEveryChangeOnTheRecord() {
		CompetitionView end = finished();
		assertThat(this.published.stream(AuditedChange.class).map(AuditedChange::action)).containsExactly(
				"competition.created", "event.added", "competition.moved", "competition.moved", "competition.moved",
				"competition.moved");
		assertThat(this.published.stream(AuditedChange.class)).last()
			.isEqualTo(
					AuditedChange.of(SECRETARY, "competition", end.id(), "competition.moved").from("running", "final"));
	}

	private CompetitionView planned() {
		return this.competitions.create(aCompetition("Frostlight Trophy"), SECRETARY);
	}

	private CompetitionView finished() {
		CompetitionView competition = planned();
		this.competitions.addEvent(competition.id(), anEvent("Junior", 7), SECRETARY);
		for (CompetitionState next : List.of(CompetitionState.ENTRIES_OPEN, CompetitionState.ENTRIES_CLOSED,
				CompetitionState.RUNNING, CompetitionState.FINAL)) {
			competition = move(competition, next);
		}
		return competition;
	}

	private CompetitionView move(CompetitionView competition, CompetitionState next) {
		return this.competitions.move(competition.id(), competition.version(), next, SECRETARY);
	}

	private static DraftEvent withSegments(DraftEvent.DraftSegment... segments) {
		return new DraftEvent("Junior", DraftEvent.Judging.by(JudgingMethod.MAJORITY, 7), List.of(segments));
	}

	/** Stands for the modules that may refuse. */
	static class Veto implements CompetitionMoveGuard, Competitions.EventChangeGuard {

		private String reason = "";

		@Override
		public Optional<Sentence> refusal(CompetitionView competition, CompetitionState next) {
			return refusal();
		}

		@Override
		public Optional<Sentence> refusal(EventId event) {
			return refusal();
		}

		private Optional<Sentence> refusal() {
			String said = this.reason;
			this.reason = "";
			return said.isEmpty() ? Optional.empty() : Optional.of(Sentence.said(said));
		}

	}

	@TestConfiguration(proxyBeanMethods = false)
	static class Outside {

		@Bean
		Clock clock() {
			return Clock.systemUTC();
		}

		@Bean
		Ids ids() {
			return new Ids(Clock.systemUTC(), new SecureRandom());
		}

		@Bean
		Veto veto() {
			return new Veto();
		}

	}

}
