package rimebook.performances;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.panels.Panels;
import rimebook.panels.SeatId;
import rimebook.panels.SeatView;
import rimebook.paper.PaperKeying;
import rimebook.placement.MarkLine;
import rimebook.placement.MarkSubmission;
import rimebook.points.CalledListView;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsJudge;
import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.tablets.JudgeTables;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentStanding;
import rimebook.tabulation.SubstituteJudge;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.Crew;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatException;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class PanelChangesIntegrationTests {

	private static final Actor KEYER = new Actor("Ann Keyer", "accountant", "test");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private PanelChanges changes;

	@Autowired
	private AbsentJudges absent;

	@Autowired
	private CardReopening reopening;

	@Autowired
	private SegmentRun run;

	@Autowired
	private JudgeTables tables;

	@Autowired
	private Standings standings;

	@Autowired
	private Panels panels;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private SegmentId segment;

	private SeatView substitute;

	/** What each team was given, by its entry. */
	private final Map<String, List<CardMarks>> given = new HashMap<>();

	private final Map<String, CardMarks> ofSubstitute = new HashMap<>();

	private void begin(int teams, int judges) {
		begin(SmallCompetition.running(this.context, teams, judges));
	}

	private void begin(SmallCompetition running) {
		this.day = running;
		this.substitute = running.seatSubstitute();
		this.segment = running.open(1);
	}

	/** All three judges gave both teams their marks, the substitute only the first. */
	private void substituteMissesTheSecondOf(int teams) {
		begin(teams, 3);
		skate(true);
		skate(false);
	}

	/** The second team was closed without the second of three judges. */
	private PerformanceView judgeTwoMissesTheSecondOfThree() {
		begin(3, 3);
		skate(false);
		PerformanceView second = this.day.callNext(1);
		sendWithout(second, 2);
		closeWithout(second, 2);
		return second;
	}

	@Test
	void aSubstituteHasACodeAndATabletLikeAJudge() {
		begin(2, 3);
		this.panels.issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		SeatView seat = this.panels.seat(this.substitute.id());
		assertThat(seat.code()).hasSize(8);
		assertThat(Crew.visitor(this.context, Role.REFEREE).open("/desk/panel/" + seat.event() + "/slips").text())
			.contains("Substitute judge, Junior", seat.code().substring(0, 4) + " " + seat.code().substring(4));
		assertThat(this.tables.tableOf(seat.id()).decided().panel()).startsWith("You are the substitute");
	}

	@Test
	void cardsOfASubstituteAreTakenNeverCountedAndNeverWaitedFor() {
		substituteMissesTheSecondOf(2);
		assertThat(this.run.performances(this.segment))
			.allMatch((performance) -> performance.status() == PerformanceStatus.CLOSED);
		assertThat(placesPublished()).isEqualTo(places(drawn(), usual()));
		assertThat(this.database.sql("select count(*) from card_submission where seat_id = ?")
			.param(this.substitute.id().value())
			.query(Long.class)
			.single()).isOne();
	}

	@Test
	void allCardsOfTheSubstituteCountInPlaceOfTheJudgesOnceTheSeatIsTakenOver() {
		begin(5, 3);
		skate(true);
		skate(true);
		skate(true);
		takeOver(2);
		assertThat(latest().number()).isEqualTo(4);
		assertThat(latest().cause()).isEqualTo(ResultVersion.Cause.PANEL);
		assertThat(latest().note()).contains("taken over the seat of Judge 2", "A broken tablet");
		List<EntryCards> replaced = SubstituteJudge.inPlaceOf(drawn(), 2, this.ofSubstitute);
		assertThat(placesPublished()).isEqualTo(places(replaced, usual()));
		assertThat(latest().standing().panelNotes()).singleElement().asString().contains("Judge 2");
		assertThat(this.tables.tableOf(seat(2).id()).decided().panel()).contains("not yours");
		assertThat(this.tables.tableOf(this.substitute.id()).decided().panel())
			.contains("in place of those of Judge 2");
		PerformanceView next = this.day.callNext(1);
		sendWithout(next, 2);
		refused("cards-missing", "Substitute judge", () -> this.day.close(next));
		this.day.send(next, this.substitute, 1, new CardMarks(510, 510));
		this.day.close(next);
		assertThat(latest().standing().panelNotes()).as("said by every later version").hasSize(1);
		assertThat(lines()).contains("seat.taken-over");
	}

	@Test
	void aSubstituteWithoutEveryCardTakesOverNothing() {
		substituteMissesTheSecondOf(3);
		String team = this.run.performances(this.segment).get(1).startNumber() + " ";
		refused("substitute-cards-missing", "No. " + team, () -> takeOver(2));
		refused("substitute-cards-missing", "No tablet has joined", () -> takeOver(2));
		assertThat(latest().number()).isEqualTo(2);
		assertThat(this.changes.ofSegment(this.segment).changes()).isEmpty();
	}

	@Test
	void missingCardsOfTheSubstituteAreKeyedInFromPaperAlthoughTheTeamIsClosed() {
		substituteMissesTheSecondOf(3);
		PerformanceView second = this.run.performances(this.segment).get(1);
		assertThat(stand()).contains("Substitute judge, No. " + second.startNumber(), "Key it in");
		refused("card-closed", "closed", () -> key(second, seat(1), new CardMarks(500, 500), KEYER));
		CardMarks late = new CardMarks(390, 410);
		key(second, this.substitute, late, KEYER);
		refused("substitute-cards-missing", "on paper", () -> takeOver(2));
		assertThat(latest().number()).as("it does not count yet").isEqualTo(2);
		Visitor.Page page = Crew.visitor(this.context, Role.ACCOUNTANT)
			.open("/desk/keying/" + this.segment + "/cards/s1?closed=" + second.id());
		assertThat(page.text()).contains("Card of Substitute judge");
		key(second, this.substitute, late, SmallCompetition.ACCOUNTANT);
		refused("card-closed", "closed",
				() -> key(second, this.substitute, new CardMarks(590, 590), SmallCompetition.ACCOUNTANT));
		takeOver(2);
		this.ofSubstitute.put(second.entry().toString(), late);
		assertThat(placesPublished())
			.isEqualTo(places(SubstituteJudge.inPlaceOf(drawn(), 2, this.ofSubstitute), usual()));
	}

	@Test
	void ofTwoJudgesWhoAreIllTheSecondIsLeftOutByRule() {
		begin(3, 5);
		skate(true);
		takeOver(1);
		refused("substitute-taken", "left out by a rule", () -> takeOver(2));
		PerformanceView second = this.day.callNext(1);
		sendWithout(second, 1, 2);
		this.day.send(second, this.substitute, 1, new CardMarks(510, 510));
		closeWithout(second, 2);
		assertThat(latest().standing().judgeNumbers()).containsExactly(1, 3, 4, 5);
		assertThat(latest().standing().panelNotes()).hasSize(3);
	}

	@Test
	void aJudgeLeftOutReturnsByARuleAlsoAfterLaterCardsWereClosed() {
		judgeTwoMissesTheSecondOfThree();
		skateWithout(2);
		refused("change-settled", "by a rule: name it", this::judgeTwoComesBack);
		refused("judge-cards-missing", "No. 2", () -> judgeTwoReturns("14.7"));
		for (PerformanceView missed : this.run.performances(this.segment).subList(1, 3)) {
			key(missed, seat(2), new CardMarks(450, 470), KEYER);
			key(missed, seat(2), new CardMarks(450, 470), SmallCompetition.ACCOUNTANT);
		}
		judgeTwoReturns("14.7");
		assertThat(latest().standing().judgeNumbers()).containsExactly(1, 2, 3);
		assertThat(latest().note()).isEqualTo("The cards of Judge 2 count again (14.7). Well again");
		assertThat(latest().standing().rows()).allMatch((row) -> row.cards().size() == 3);
	}

	private void judgeTwoReturns(String rule) {
		this.changes.takeBack(this.segment, seat(2).id(), rule, "Well again", SmallCompetition.REFEREE);
	}

	private void key(PerformanceView performance, SeatView seat, CardMarks marks, Actor actor) {
		this.context.getBean(PaperKeying.class).key(performance.id(), seat.id(), MarkLine.card(marks), actor);
	}

	@Test
	void beforeClosingTheStandSaysWhatFollowsWithoutTheSubstitutesCard() {
		begin(2, 3);
		PerformanceView performance = this.day.callNext(1);
		assertThat(stand()).doesNotContain("Closing does not wait for the substitute");
		this.day.sendAll(performance);
		assertThat(stand()).contains(
				"Closing does not wait for the substitute, whose card is missing: Substitute judge",
				"the substitute can take over no seat in this segment");
		this.day.send(performance, this.substitute, 1, new CardMarks(510, 510));
		assertThat(stand()).doesNotContain("Closing does not wait for the substitute");
	}

	@Test
	void gradesOfTheSubstituteCountInPlaceOfTheJudgesInPointsJudging() {
		int drawn = skateByPoints(1, -4, 2, 3);
		takeOver(2);
		int replaced = total();
		assertThat(latest().cause()).isEqualTo(ResultVersion.Cause.PANEL);
		assertThat(latest().standing().panelNotes()).singleElement().asString().contains("Judge 2");
		assertThat(this.changes.ofSegment(this.segment).takenOver()).isEqualTo("Judge 2");
		assertThat(replaced).isNotEqualTo(drawn).isEqualTo(skateByPoints(1, 3, 2, -4));
	}

	/** One team with each judge's one grade, the last the substitute's; its points. */
	private int skateByPoints(int... grades) {
		begin(PointsCompetition.running(this.context, 2, 3));
		PerformanceView performance = this.day.callNext(1);
		new CalledElements(this.context, performance).call("I4+pi3", "ME4");
		CalledListView list = this.context.getBean(ElementCalls.class).ofPerformance(performance.id()).orElseThrow();
		List<SeatView> seats = this.panels.withCard(this.day.event().id());
		IntStream.range(0, grades.length)
			.forEach((i) -> PointsJudge.send(this.context, performance, seats.get(i), list, grades[i]));
		this.context.getBean(ListAuthorisations.class)
			.authorise(performance.id(), list.sequence(), SmallCompetition.ACCOUNTANT);
		this.day.close(performance);
		return total();
	}

	private int total() {
		return Objects.requireNonNull(latest().standing().rows().get(0).score()).total();
	}

	private String stand() {
		return Crew.visitor(this.context, Role.REFEREE).open("/desk/stand/" + this.segment).text();
	}

	@Test
	void aTakeoverIsTakenBackUntilTheNextCardsAreClosed() {
		begin(4, 3);
		skate(true);
		skate(true);
		takeOver(1);
		refused("substitute-taken", "Judge 1", () -> takeOver(3));
		this.changes.takeBack(this.segment, seat(1).id(), "The tablet works again", SmallCompetition.REFEREE);
		assertThat(placesPublished()).isEqualTo(places(drawn(), usual()));
		assertThat(latest().note()).isEqualTo("The cards of Judge 1 count again. The tablet works again");
		assertThat(latest().standing().panelNotes()).isEmpty();
		takeOver(1);
		skate(true);
		refused("change-settled", "Judge 1",
				() -> this.changes.takeBack(this.segment, seat(1).id(), "Too late", SmallCompetition.REFEREE));
	}

	@Test
	void anAbsentJudgeIsLeftOutOfTheWholeSegment() {
		begin(4, 5);
		skate(false);
		skate(false);
		PerformanceView third = this.day.callNext(1);
		List<CardMarks> cards = new ArrayList<>();
		for (SeatView seat : this.day.seats()) {
			cards.add((seat.number() == 4) ? new CardMarks(0, 0) : send(third, seat));
		}
		this.given.put(third.entry().toString(), cards);
		refused("card-is-there", "Judge 1", () -> closeWithout(third, 1, 4));
		refused("cards-missing", "Judge 4", () -> this.day.close(third));
		closeWithout(third, 4);
		Standing standing = latest().standing();
		assertThat(standing.judgeNumbers()).containsExactly(1, 2, 3, 5);
		assertThat(standing.rows()).allMatch((row) -> row.cards().size() == 4);
		assertThat(placesPublished())
			.isEqualTo(places(without(4), usual().withEvenPanel(PlacementRules.EvenPanel.ALLOW)));
		assertThat(latest().note()).contains("Judge 4 is left out of the whole segment (12.3)", "Taken ill");
		assertThat(standing.panelNotes()).hasSize(2).last().asString().contains("4 judges count, an even number");
		Visitor.Page desk = Crew.visitor(this.context, Role.ACCOUNTANT).open("/desk/results/" + this.segment);
		assertThat(desk.text()).contains("Judge 4 is left out", "The rulebook in force and its officials decide");
		assertThat(desk.document().select("thead").first().text()).contains("J5").doesNotContain("J4");
		assertThat(lines()).contains("cards.closed-without");
		skateWithout(4);
		assertThat(latest().standing().rows()).hasSize(4);
	}

	@Test
	void aJudgeLeftOutComesBackOnlyWithEveryCard() {
		PerformanceView second = judgeTwoMissesTheSecondOfThree();
		refused("judge-cards-missing", "No. 2", this::judgeTwoComesBack);
		this.reopening.reopen(second.id(), this.day.now(second).version(), "The card turned up",
				SmallCompetition.REFEREE);
		send(second, seat(2));
		this.day.close(second);
		judgeTwoComesBack();
		assertThat(latest().standing().judgeNumbers()).containsExactly(1, 2, 3);
		assertThat(latest().standing().rows()).allMatch((row) -> row.cards().size() == 3);
	}

	@Test
	void theLastCardIsNeverLeftOut() {
		begin(2, 3);
		PerformanceView first = this.day.callNext(1);
		refused("panel-empty", "end the performance", () -> closeWithout(first, 1, 2, 3));
		refused("absent-missing", "Say whose", () -> closeWithout(first));
		assertThat(this.day.now(first).status()).isEqualTo(PerformanceStatus.ON_ICE);
	}

	@Test
	void whatWasDecidedIsNeverRewritten() {
		begin(2, 3);
		skate(true);
		takeOver(2);
		for (String statement : List.of("update panel_change set reason = 'x'", "delete from panel_change")) {
			assertThatException().isThrownBy(() -> this.database.sql(statement).update())
				.withMessageContaining("keeps what was written");
		}
	}

	@Test
	void whoMarksAsSubstituteStaysUntilTheSegmentIsDone() {
		begin(2, 3);
		SeatView seat = this.panels.seat(this.substitute.id());
		refused("panel-in-use", "is under way",
				() -> this.panels.vacate(seat.id(), seat.version(), SmallCompetition.REFEREE));
	}

	private void skate(boolean withSubstitute) {
		PerformanceView performance = this.day.callNext(1);
		this.given.put(performance.entry().toString(), this.day.sendAll(performance));
		if (withSubstitute) {
			int mark = 10 * (36 + 3 * this.ofSubstitute.size());
			CardMarks card = new CardMarks(mark, mark + 20);
			this.day.send(performance, this.substitute, 1, card);
			this.ofSubstitute.put(performance.entry().toString(), card);
		}
		this.day.close(performance);
	}

	private void skateWithout(int judge) {
		PerformanceView performance = this.day.callNext(1);
		sendWithout(performance, judge);
		this.day.close(performance);
	}

	private void sendWithout(PerformanceView performance, Integer... judges) {
		Set<Integer> silent = Set.of(judges);
		this.day.seats()
			.stream()
			.filter((seat) -> !silent.contains(seat.number()))
			.forEach((seat) -> send(performance, seat));
	}

	private CardMarks send(PerformanceView performance, SeatView seat) {
		CardMarks marks = new CardMarks(10 * (40 + seat.number() * performance.startNumber()), 450);
		this.day.send(new MarkSubmission.SubmitCard(UUID.randomUUID(), performance.id(), 1, marks), seat);
		return marks;
	}

	private void takeOver(int judge) {
		this.changes.takeOver(this.segment, seat(judge).id(), "A broken tablet", SmallCompetition.REFEREE);
	}

	private void judgeTwoComesBack() {
		this.changes.takeBack(this.segment, seat(2).id(), "The card turned up", SmallCompetition.REFEREE);
	}

	private void closeWithout(PerformanceView performance, int... judges) {
		Set<SeatId> seats = new HashSet<>();
		for (int judge : judges) {
			seats.add(seat(judge).id());
		}
		this.absent.close(new AbsentJudges.CloseWithout(performance.id(), this.day.now(performance).version(), seats,
				"12.3", "Taken ill"), SmallCompetition.REFEREE);
	}

	private SeatView seat(int judge) {
		return this.day.seats().get(judge - 1);
	}

	private List<EntryCards> drawn() {
		return this.given.entrySet()
			.stream()
			.map((one) -> new EntryCards(one.getKey(), EntryStatus.SKATED, one.getValue()))
			.toList();
	}

	private List<EntryCards> without(int judge) {
		return drawn().stream().map((one) -> {
			List<CardMarks> cards = new ArrayList<>(one.cards());
			cards.remove(judge - 1);
			return new EntryCards(one.entry(), one.status(), cards);
		}).toList();
	}

	private PlacementRules usual() {
		return this.day.event().rules(this.day.event().segments().get(0).kind());
	}

	private static Map<String, Integer> places(List<EntryCards> cards, PlacementRules rules) {
		SegmentStanding standing = PlacementTabulation.ofCards(rules, cards);
		Map<String, Integer> places = new HashMap<>();
		standing.rows().forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

	private Map<String, Integer> placesPublished() {
		Map<String, Integer> places = new HashMap<>();
		latest().standing().rows().forEach((row) -> places.put(row.entry(), row.place()));
		return places;
	}

	private ResultVersion latest() {
		return this.standings.latest(this.segment).orElseThrow();
	}

	private List<String> lines() {
		return this.database.sql("select action from record_line order by number").query(String.class).list();
	}

	private static void refused(String code, String words, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.withMessageContaining(words)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
