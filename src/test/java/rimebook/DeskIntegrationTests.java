package rimebook;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.paper.PaperKeying;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarkLine;
import rimebook.placement.MarksAmendment;
import rimebook.protests.Corrections;
import rimebook.protests.ProposedCorrections;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.ResultPublication;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.rulings.QuestionView;
import rimebook.rulings.Rulings;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.ACCOUNTANT;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** What the first page of the desk says to each role of what waits. */
@WholeApplication
class DeskIntegrationTests {

	/** Signing in takes longer than all they look at. */
	private static final Map<Role, Visitor> VISITORS = new EnumMap<>(Role.class);

	@Autowired
	private ApplicationContext context;

	private SmallCompetition day;

	@Test
	void theSecretaryIsToldWhatTheCompetitionWaitsFor() {
		this.day = SmallCompetition.upTo(CompetitionState.PLANNED, this.context, 0,
				CompetitionFixtures.anEvent("Junior", 3));
		assertThat(mine(Role.SECRETARY))
			.containsExactly(named("Planned: write down its events, then open the entries"));
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		assertThat(mine(Role.SECRETARY)).containsExactly(named("Entries are open, 2 teams so far"));
		assertThat(others(Role.ACCOUNTANT))
			.containsExactly(named("Entries are open, 2 teams so far") + " for Secretary");
		this.day.move(CompetitionState.ENTRIES_CLOSED);
		assertThat(mine(Role.SECRETARY)).containsExactly(named("Entries are closed: start it"));
		assertThat(others(Role.SECRETARY)).containsExactly(first("To be drawn: 2 teams") + " for Referee");
	}

	@Test
	void emptySeatsWaitForRefereeAndSecretaryAndTheDrawForTheReferee() {
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_CLOSED, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		SeatView seat = this.day.seats().get(0);
		this.context.getBean(Panels.class).vacate(seat.id(), seat.version(), REFEREE);
		String empty = "1 seat is empty Junior " + this.day.competition().name();
		assertThat(mine(Role.REFEREE)).containsExactly(first("To be drawn: 2 teams"), empty);
		assertThat(mine(Role.SECRETARY)).contains(empty);
		assertThat(others(Role.ACCOUNTANT)).contains(empty + " for Secretary, Referee");
	}

	@Test
	void whatHappensOnTheIceWaitsForRefereeAnnouncerAndKeyingDesk() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.day.draw(1);
		assertThat(mine(Role.REFEREE)).containsExactly(first("Ready to be opened"));
		this.context.getBean(SegmentRun.class).open(this.day.segment(1), REFEREE);
		assertThat(mine(Role.REFEREE)).containsExactly(first("Call the next team"));
		PerformanceView performance = this.day.callNext(1);
		assertThat(mine(Role.REFEREE)).containsExactly(first("On the ice, 3 missing before the cards can be closed"));
		assertThat(mine(Role.ANNOUNCER)).containsExactly(first("To announce, 1 team still waiting"));
		this.context.getBean(PaperKeying.class)
			.key(performance.id(), this.day.seats().get(0).id(), MarkLine.card(new CardMarks(400, 400)), REFEREE);
		assertThat(mine(Role.ACCOUNTANT)).containsExactly(first("1 paper card to key in or settle"));
		assertThat(others(Role.ACCOUNTANT))
			.containsExactly(first("To announce, 1 team still waiting") + " for Announcer");
		assertThat(all(Role.TECHNICAL)).containsExactly(first("To announce, 1 team still waiting") + " for Announcer");
	}

	@Test
	void completeCardsWaitToBeClosed() {
		this.day = SmallCompetition.running(this.context, 1, 3);
		this.day.open(1);
		this.day.sendAll(this.day.callNext(1));
		assertThat(mine(Role.REFEREE)).containsExactly(first("Everything is in: close the cards"));
		assertThat(mine(Role.ADMINISTRATOR)).contains(first("Everything is in: close the cards"));
	}

	@Test
	void calledElementsWaitForTheTechnicalPanel() {
		this.day = PointsCompetition.running(this.context, 1, 3);
		this.day.open(1);
		this.day.callNext(1);
		String list = "On the ice: elements to call and authorise";
		assertThat(mine(Role.TECHNICAL)).singleElement().asString().startsWith(list);
		assertThat(others(Role.REFEREE))
			.anySatisfy((line) -> assertThat(line).startsWith(list).endsWith(" for Technical panel"));
	}

	@Test
	void aResultIsPostedThenSignedByBoth() {
		skated();
		assertThat(mine(Role.REFEREE)).contains(first("All have skated: post the result"));
		assertThat(mine(Role.ACCOUNTANT)).containsExactly(first("All have skated: post the result"));
		ResultPublication publication = this.context.getBean(ResultPublication.class);
		publication.post(this.day.segment(1), version(), ACCOUNTANT);
		assertThat(mine(Role.ACCOUNTANT)).containsExactly(first("Posted: sign the result"));
		publication.sign(this.day.segment(1), version(), Signatories.Signatory.REFEREE, REFEREE);
		assertThat(mine(Role.REFEREE)).noneMatch((line) -> line.contains("sign the result"));
		assertThat(others(Role.REFEREE)).contains(first("Posted: sign the result") + " for Accountant");
		publication.sign(this.day.segment(1), version(), Signatories.Signatory.ACCOUNTANT, ACCOUNTANT);
		assertThat(all(Role.ACCOUNTANT)).noneMatch((line) -> line.contains("sign the result"));
	}

	@Test
	void protestsAndCorrectionsWaitForWhoDecidesThem() {
		skated();
		this.context.getBean(Protests.class)
			.file(new Protests.FileProtest(this.day.segment(1), new ProtestView.Claim(this.day.entries().get(0).id(),
					ProtestView.ProtestCategory.CONDUCT, "They were late.", 0), "Mira Sund", null), SECRETARY);
		this.context.getBean(Corrections.class)
			.propose(new Corrections.ProposeCorrection(MarksAmendment.on(this.day.performances(1).get(0).id(),
					this.day.seats().get(0).id(), new CardMarks(100, 100)), "Typed one key off."), ACCOUNTANT);
		assertThat(mine(Role.REFEREE)).contains(first("1 protest to decide"), first("1 correction to approve"));
		assertThat(mine(Role.ACCOUNTANT)).contains(first("1 correction to approve"));
		assertThat(others(Role.SECRETARY)).contains(first("1 protest to decide") + " for Referee",
				first("1 correction to approve") + " for Referee, Accountant");
		ProposedCorrections proposed = this.context.getBean(ProposedCorrections.class);
		assertThat(proposed.by(ACCOUNTANT, this.day.segment(1))).isOne();
		assertThat(proposed.byOthers(this.day.segment(1), ACCOUNTANT)).isZero();
		assertThat(proposed.byOthers(this.day.segment(1), REFEREE)).isOne();
	}

	@Test
	void questionsWaitForTheReferee() {
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3));
		this.context.getBean(Rulings.class)
			.ask(new Rulings.AskQuestion(this.day.entries().get(0).id(), null, QuestionView.RulingTopic.PROP,
					"May a flag be carried?", "Mira Sund"), SECRETARY);
		assertThat(mine(Role.REFEREE)).containsExactly(named("1 question to rule on"));
		assertThat(others(Role.SECRETARY)).containsExactly(named("1 question to rule on") + " for Referee");
	}

	@Test
	void aPageOnWhichOnlySomebodyElseCanActSaysWho() {
		this.day = SmallCompetition.running(this.context, 1, 3);
		String draw = "/desk/draw/" + this.day.segment(1);
		assertThat(visitor(Role.SECRETARY).open(draw).document().select(".reader").text())
			.isEqualTo("You can look here; changes are made by Referee");
		assertThat(visitor(Role.REFEREE).open(draw).document().select(".reader")).isEmpty();
	}

	private void skated() {
		this.day = SmallCompetition.running(this.context, 2, CompetitionFixtures.anEvent("Junior", 3).signedAtOnce());
		this.day.open(1);
		this.day.skateRest(1);
	}

	private int version() {
		return this.context.getBean(Standings.class).result(this.day.segment(1)).orElseThrow().version();
	}

	private String named(String what) {
		return what + " " + this.day.competition().name();
	}

	private String first(String what) {
		return what + " Junior, " + this.day.event().segments().get(0).name() + " " + this.day.competition().name();
	}

	private List<String> mine(Role role) {
		return lines(role, "#mine ~ .work li").toList();
	}

	private List<String> others(Role role) {
		return lines(role, "#others ~ .work li").toList();
	}

	private List<String> all(Role role) {
		return lines(role, ".work li").toList();
	}

	private Visitor visitor(Role role) {
		return VISITORS.computeIfAbsent(role, (one) -> Crew.visitor(this.context, one));
	}

	private Stream<String> lines(Role role, String selector) {
		return visitor(role).open("/desk")
			.document()
			.select(selector)
			.stream()
			.map(Element::text)
			.filter((line) -> line.contains(this.day.competition().name()));
	}

}
