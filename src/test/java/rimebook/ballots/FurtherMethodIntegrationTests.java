package rimebook.ballots;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.core.annotation.Order;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventId;
import rimebook.competition.JudgingMethod;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceRegister;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.StatusCorrection;
import rimebook.protests.CorrectionView;
import rimebook.protests.Corrections;
import rimebook.published.Standing;
import rimebook.results.Standings;
import rimebook.shared.RuleViolationException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;

/**
 * A further way of judging is a module of its own and no edit elsewhere: teams are
 * entered, drawn, marked and placed in one that only this package knows.
 */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = "spring.datasource.url=jdbc:h2:mem:ballots;LOCK_TIMEOUT=10000;DB_CLOSE_DELAY=-1")
@Import(FurtherMethodIntegrationTests.Module.class)
class FurtherMethodIntegrationTests {

	private static final int JUDGES = 3;

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Ballots ballots;

	private SmallCompetition day;

	@BeforeEach
	void aDay() {
		this.day = SmallCompetition.running(this.context, 3, ballot("Ballot"));
	}

	private static DraftEvent ballot(String name) {
		return new DraftEvent(name, DraftEvent.Judging.by(Ballots.METHOD, JUDGES),
				List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()));
	}

	@Test
	void isDrawnMarkedAndPlaced() {
		this.day.open(1);
		skate(1, 9, 2, 5);
		assertThat(segment(1)).containsExactly(tuple(1, 27), tuple(2, 15), tuple(3, 6));
		this.day.open(2);
		assertThat(this.day.performances(2)).hasSize(3);
		skate(2, 1, 10, 1);
		assertThat(standing(this.day.event().id()).isComplete()).isTrue();
		assertThat(standing(this.day.event().id()).rows()).hasSize(3)
			.allSatisfy((row) -> assertThat(row.segmentPlaces()).doesNotContainNull())
			.isSortedAccordingTo((one, other) -> Integer.compare(other.total(), one.total()));
	}

	/** Its cards are no marks that could be laid beside each other. */
	@Test
	void thePanelReviewSaysThatItHasNothingToCompare() {
		this.day.open(1);
		skate(1, 9, 2, 5);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		for (String page : List.of("events/" + this.day.event().id(), this.day.competition().id().toString())) {
			assertThat(referee.open("/desk/review/" + page).text())
				.contains("In this way of judging there are no marks of single judges");
		}
	}

	@Test
	void waitsForEveryCardAndFollowsACorrection() {
		this.day.open(1);
		PerformanceView first = this.day.callNext(1);
		give(first, this.day.seats().get(0), 4);
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> this.day.close(first))
			.withMessageContaining("Judge 2")
			.withMessageContaining("Judge 3");
		this.day.seats().forEach((seat) -> give(first, seat, 4));
		this.day.close(first);
		skate(1, 5);
		Corrections corrections = this.context.getBean(Corrections.class);
		CorrectionView proposed = corrections.propose(
				new Corrections.ProposeCorrection(StatusCorrection.StatusAmendment
					.on(this.day.performances(1).get(1).id(), PerformanceStatus.DISQUALIFIED), "Prop on the ice."),
				SmallCompetition.ACCOUNTANT);
		corrections.approve(proposed.id(), proposed.version(), SmallCompetition.REFEREE);
		assertThat(standing(this.day.segment(1)).rows()).first().extracting(Standing.Row::total).isEqualTo(12);
	}

	/** Also the pages that lay out what the two known ways have more of. */
	@Test
	void isShownToEverybodyWithoutAFault() {
		this.day.open(1);
		skate(1, 3);
		PerformanceView now = this.day.callNext(1);
		give(now, this.day.seats().get(0), 4);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String competition = this.day.competition().slug();
		String event = this.day.event().slug();
		String segment = this.day.event().segments().get(0).slug();
		List<String> pages = List.of(
				"/desk/competitions/" + this.day.competition().id() + "/events/" + this.day.event().id(),
				"/desk/stand/" + this.day.segment(1), "/desk/protests/" + this.day.segment(1),
				"/desk/results/" + this.day.segment(1), "/follow/" + competition,
				"/follow/" + competition + "/" + event,
				"/api/public/competitions/" + competition + "/events/" + event + "/segments/" + segment,
				"/api/public/competitions/" + competition + "/events/" + event + "/segments/" + segment + ".csv");
		pages.forEach((page) -> assertThat(referee.open(page).status()).as(page).isEqualTo(200));
		assertThat(referee.open(pages.get(0)).text()).contains("Ballots");
		assertThat(referee.open(pages.get(1)).text()).contains("Judge 1", "4");
		assertThat(referee.open(pages.get(6)).text()).contains("It has 9 ballots.");
	}

	/** Never the card of two marks: nothing of it would be taken. */
	@Test
	void withoutACardOnTabletsItsTabletsSayThatItIsJudgedOnPaper() {
		this.day.open(1);
		PerformanceView now = this.day.callNext(1);
		Visitor tablet = tablet();
		Visitor.Page card = tablet.open("/judge/card");
		assertThat(card.status()).isEqualTo(200);
		assertThat(card.text()).contains("Judge 1, Ballot", "This event has no card on tablets yet.",
				"judged by another way (Ballots). Write your marks on paper");
		assertThat(card.document().select("script[type=module], button, .mark")).isEmpty();
		assertThat(tablet.open("/api/judge/table").text()).contains("\"method\":\"BALLOT\"", now.id().toString(),
				"\"cards\":[]");
		assertThat(tablet
			.json("PUT", "/api/cards/" + UUID.randomUUID(),
					"{\"performance\":\"" + now.id() + "\",\"sequence\":1,\"first\":4.0,\"second\":4.0}")
			.statusCode()).isEqualTo(422);
	}

	@Test
	void bringsItsOwnCardToTablets() {
		this.day = SmallCompetition.running(this.context, 1, ballot(BallotOnTablet.EVENT));
		this.day.open(1);
		Visitor.Page card = tablet().open("/judge/card");
		assertThat(card.status()).isEqualTo(200);
		assertThat(card.document().select("h1").text()).isEqualTo("Judge 1: a whole number from 0 to 10");
	}

	/** The tablet of the first seat. */
	private Visitor tablet() {
		Visitor tablet = new Visitor(
				Integer.parseInt(this.context.getEnvironment().getRequiredProperty("local.server.port")));
		String code = this.context.getBean(Panels.class)
			.issueCode(this.day.seats().get(0).id(), SmallCompetition.REFEREE)
			.code();
		tablet.open("/judge").submit("form[action=/judge]", Map.of("code", Objects.requireNonNull(code)));
		return tablet;
	}

	@Test
	void oneThatNobodyHasIsRefused() {
		DraftEvent draft = new DraftEvent("Nobody's", DraftEvent.Judging.by(new JudgingMethod("NOBODYS"), JUDGES),
				List.of(CompetitionFixtures.aShort()));
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> SmallCompetition.running(this.context, 1, draft))
			.matches((refused) -> refused.code().equals("method-unknown"));
	}

	private void skate(int position, int... numbers) {
		for (int number : numbers) {
			PerformanceView performance = this.day.callNext(position);
			this.day.seats().forEach((seat) -> give(performance, seat, number));
			this.day.close(performance);
		}
	}

	private void give(PerformanceView performance, SeatView seat, int number) {
		this.ballots.give(performance.id(), seat.id(), number);
	}

	private List<Tuple> segment(int position) {
		return standing(this.day.segment(position)).rows()
			.stream()
			.map((row) -> tuple(row.place(), row.total()))
			.toList();
	}

	private Standing standing(SegmentId segment) {
		return this.context.getBean(Standings.class).latest(segment).orElseThrow().standing();
	}

	private Standing standing(EventId event) {
		return this.context.getBean(Standings.class).latest(event).orElseThrow().standing();
	}

	/** All that has to be there for it. */
	@TestConfiguration(proxyBeanMethods = false)
	static class Module {

		@Bean
		@Order(9)
		JudgingMethod ballot() {
			return Ballots.METHOD;
		}

		@Bean
		Ballots ballots(PerformanceRegister performances, Clock clock) {
			return new Ballots(performances, clock);
		}

		@Bean
		BallotOnTablet ballotOnTablet() {
			return new BallotOnTablet();
		}

		@Bean
		BallotStandings ballotStandings(Entries entries) {
			return new BallotStandings(entries);
		}

	}

}
