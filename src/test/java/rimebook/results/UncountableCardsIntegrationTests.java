package rimebook.results;

import java.time.OffsetDateTime;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.JudgingMethod;
import rimebook.competition.JudgingPolicies;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.placement.MarksAmendment;
import rimebook.protests.Corrections;
import rimebook.shared.RuleViolationException;
import rimebook.stand.Stand;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.PlacementRules;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;

/** A mark that an event does not count is named, never a failure of the service. */
@WholeApplication
class UncountableCardsIntegrationTests {

	private static final CardMarks ZERO = new CardMarks(0, 500);

	private static final CardMarks GOOD = new CardMarks(500, 500);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private PerformanceView performance;

	@BeforeEach
	void anEventThatRefusesZero() {
		JudgingPolicies usual = JudgingPolicies.usual();
		this.day = SmallCompetition
			.running(this.context, 2, new DraftEvent("Adult", new DraftEvent.Judging(JudgingMethod.MAJORITY, 3, "",
					new JudgingPolicies(usual.freeSkatingTieBreak(), usual.sharedOrdinals(),
							usual.equalJudgesInFavour(), PlacementRules.ZeroMark.REFUSE, usual.disqualifiedPlaces()),
					null, true), java.util.List.of(CompetitionFixtures.aFree())));
		this.day.open(1);
		this.performance = this.day.callNext(1);
	}

	@Test
	void closingNamesTeamAndJudgeOfAMarkThatCannotCount() {
		this.day.sendAll(this.performance);
		keep(this.day.seats().get(1), ZERO);
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> this.day.close(this.performance))
			.withMessageContaining("Judge 2 for Team ")
			.withMessageContaining("0.0, which this event refuses");
		assertThat(this.context.getBean(Stand.class).ofSegment(this.day.segment(1)).now().cards().missing())
			.singleElement()
			.asString()
			.contains("Judge 2");
		String text = Crew.visitor(this.context, Role.REFEREE).open("/desk/stand/" + this.day.segment(1)).text();
		assertThat(text).contains("0.0, which this event refuses");
	}

	@Test
	void aCorrectionToAMarkThatCannotCountIsRefusedWhenItIsProposed() {
		this.day.seats().forEach((seat) -> this.day.send(this.performance, seat, 1, GOOD));
		this.day.close(this.performance);
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(
					() -> this.context.getBean(Corrections.class)
						.propose(new Corrections.ProposeCorrection(
								MarksAmendment.on(this.performance.id(), this.day.seats().get(0).id(), ZERO), "Slip."),
								ACCOUNTANT))
			.withMessageContaining("A card of Team ")
			.withMessageContaining("0.0")
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("zero-mark"));
	}

	/** As it was taken before such marks were refused on arrival. */
	private void keep(SeatView seat, CardMarks marks) {
		this.database
			.sql("insert into card_submission (id, performance_id, seat_id, sequence, first_mark, second_mark,"
					+ " origin, received_at) values (?, ?, ?, 2, ?, ?, 'JUDGE', ?)")
			.params(UUID.randomUUID(), this.performance.id().value(), seat.id().value(), marks.first(), marks.second(),
					OffsetDateTime.now())
			.update();
	}

}
