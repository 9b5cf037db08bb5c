package rimebook.paper;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.panels.SeatView;
import rimebook.performances.CardOrigin;
import rimebook.performances.CardReopening;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarkLine;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.stand.Stand;
import rimebook.stand.StandView;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Paper cards that two people key in, in placement judging. */
@WholeApplication
class PaperKeyingIntegrationTests {

	private static final Actor ANN = new Actor("Ann Keyer", "accountant", "test");

	private static final Actor BO = new Actor("Bo Keyer", "referee", "test");

	private static final Actor CY = new Actor("Cy Keyer", "accountant", "test");

	private static final CardMarks MARKS = new CardMarks(560, 570);

	private static final CardMarks OTHERS = new CardMarks(530, 570);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private PaperKeying keying;

	@Autowired
	private SegmentRun run;

	@Autowired
	private Stand stand;

	@Autowired
	private JdbcClient database;

	private SmallCompetition day;

	private PerformanceView performance;

	private SeatView seat;

	@BeforeEach
	void aTeamIsOnTheIce() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.day.open(1);
		this.performance = this.day.callNext(1);
		this.seat = this.day.seats().get(1);
	}

	@Test
	void twoEqualKeyingsAreTheReceivedCardAtThatMoment() {
		assertThat(key(MARKS, ANN).stage()).isEqualTo(SeatPaper.Stage.ONCE);
		assertThat(missing()).contains("Judge 2 (keyed once, by Ann Keyer; second keying missing)");
		SeatPaper received = key(MARKS, BO);
		assertThat(received.stage()).isEqualTo(SeatPaper.Stage.RECEIVED);
		assertThat(received.held().origin()).isEqualTo(CardOrigin.KEYED);
		assertThat(received.received()).isEqualTo(MarkLine.card(MARKS));
		assertThat(missing()).containsExactly("Judge 1", "Judge 3");
		assertThat(this.keying.unsettled(this.day.segment(1))).isEmpty();
	}

	@Test
	void nobodySeesWhatAnotherKeyedBeforeKeyingItToo() {
		key(MARKS, ANN);
		assertThat(paper(BO).said().voices()).isEmpty();
		assertThat(paper(BO).said().own()).isNull();
		assertThat(paper(ANN).said().own()).isEqualTo(MarkLine.card(MARKS));
		assertThat(lines("card.keyed")).containsExactly("Judge 2: keyed once; second keying missing");
		assertThat(everyWord()).doesNotContain("5.6");
	}

	@Test
	void theSamePersonOnlyReplacesTheirOwnKeying() {
		key(OTHERS, ANN);
		assertThat(key(MARKS, ANN).stage()).isEqualTo(SeatPaper.Stage.ONCE);
		assertThat(rows()).isEqualTo(2);
		assertThat(key(MARKS, BO).stage()).isEqualTo(SeatPaper.Stage.RECEIVED);
		assertThat(rows()).isEqualTo(3);
	}

	@Test
	void aDifferenceIsShownToBothAndSettledByName() {
		key(MARKS, ANN);
		SeatPaper differ = key(OTHERS, BO);
		assertThat(differ.stage()).isEqualTo(SeatPaper.Stage.DIFFER);
		assertThat(differ.said().voices()).extracting(SeatPaper.Voice::marks)
			.containsExactly(MarkLine.card(MARKS), MarkLine.card(OTHERS));
		assertThat(missing()).contains("Judge 2 (keyings differ)");
		assertThat(everyWord()).doesNotContain("5.6", "5.3");
		assertRefused("keyings-differ", () -> key(MARKS, CY));
		this.keying.settle(this.performance.id(), this.seat.id(), differ.sight(), MarkLine.card(MARKS), CY);
		assertThat(paper(CY).stage()).isEqualTo(SeatPaper.Stage.RECEIVED);
		assertThat(paper(CY).received()).isEqualTo(MarkLine.card(MARKS));
		assertThat(rows()).as("both keyings stay").isEqualTo(3);
		assertThat(lines("card.settled")).containsExactly("Judge 2: 5.6 / 5.7");
		assertThat(this.database.sql("select before_text from record_line where subject_id = ? and action = ?")
			.params(this.performance.id().toString(), "card.settled")
			.query(String.class)
			.single()).contains("Ann Keyer 5.6 / 5.7", "Bo Keyer 5.3 / 5.7");
	}

	@Test
	void nobodySettlesAloneWhatOnlyTheySay() {
		key(MARKS, ANN);
		key(OTHERS, BO);
		assertThat(settle(MARKS, ANN).stage()).as("her own").isEqualTo(SeatPaper.Stage.DIFFER);
		CardMarks third = new CardMarks(560, 580);
		assertThat(settle(third, CY).stage()).as("nobody's").isEqualTo(SeatPaper.Stage.DIFFER);
		assertThat(paper(BO).received()).isNull();
		assertThat(cards()).isZero();
		assertThat(everyWord()).doesNotContain("5.6", "5.3");
		assertThat(settle(third, BO).stage()).isEqualTo(SeatPaper.Stage.RECEIVED);
		assertThat(paper(ANN).received()).isEqualTo(MarkLine.card(third));
	}

	@Test
	void againstTheTabletTwoPeopleAreNeeded() {
		this.day.send(this.performance, this.seat, 1, OTHERS);
		key(MARKS, ANN);
		assertThat(settle(MARKS, ANN).stage()).isEqualTo(SeatPaper.Stage.DIFFER);
		assertThat(paper(ANN).received()).isEqualTo(MarkLine.card(OTHERS));
		assertThat(settle(MARKS, BO).stage()).isEqualTo(SeatPaper.Stage.RECEIVED);
		assertThat(paper(ANN).received()).isEqualTo(MarkLine.card(MARKS));
	}

	private SeatPaper settle(CardMarks marks, Actor who) {
		return this.keying.settle(this.performance.id(), this.seat.id(), paper(who).sight(), MarkLine.card(marks), who);
	}

	@Test
	void nothingIsSettledOnAnOlderLook() {
		key(MARKS, ANN);
		SeatPaper differ = key(OTHERS, BO);
		this.day.send(this.performance, this.seat, 1, new CardMarks(400, 400));
		assertRefused("stale-version", () -> this.keying.settle(this.performance.id(), this.seat.id(), differ.sight(),
				MarkLine.card(MARKS), CY));
		SeatPaper now = paper(CY);
		assertThat(now.said().voices()).extracting(SeatPaper.Voice::by)
			.containsExactly(new Speaker.Person("Ann Keyer"), new Speaker.Person("Bo Keyer"), new Speaker.Tablet());
		this.keying.settle(this.performance.id(), this.seat.id(), now.sight(), MarkLine.card(OTHERS), CY);
		assertRefused("nothing-to-settle", () -> this.keying.settle(this.performance.id(), this.seat.id(),
				paper(CY).sight(), MarkLine.card(MARKS), CY));
		assertThat(paper(CY).held().origin()).isEqualTo(CardOrigin.KEYED);
	}

	@Test
	void aCardFromTheTabletDoesNotWinSilently() {
		key(MARKS, ANN);
		this.day.send(this.performance, this.seat, 1, OTHERS);
		assertThat(paper(BO).isAgainstTablet()).isTrue();
		this.day.send(this.performance, this.day.seats().get(0), 1, MARKS);
		this.day.send(this.performance, this.day.seats().get(2), 1, MARKS);
		assertThat(missing()).containsExactly("Judge 2 (keyed otherwise than the tablet sent it)");
		assertRefused("cards-missing", () -> this.day.close(this.performance));
		this.keying.settle(this.performance.id(), this.seat.id(), paper(BO).sight(), MarkLine.card(OTHERS), BO);
		assertThat(paper(BO).held().origin()).as("the tablet's card counts as it was sent").isEqualTo(CardOrigin.JUDGE);
		this.day.close(this.performance);
	}

	@Test
	void whatTheTabletSentIsNotOverruledByTwoKeyings() {
		this.day.send(this.performance, this.seat, 1, OTHERS);
		assertThat(key(MARKS, ANN).isAgainstTablet()).isTrue();
		assertRefused("keyings-differ", () -> key(MARKS, BO));
		assertThat(paper(ANN).received()).isEqualTo(MarkLine.card(OTHERS));
	}

	@Test
	void aKeyingThatSaysWhatTheTabletSentChangesNothing() {
		this.day.send(this.performance, this.seat, 1, MARKS);
		assertThat(key(MARKS, ANN).stage()).isEqualTo(SeatPaper.Stage.RECEIVED);
		assertThat(paper(ANN).held().origin()).isEqualTo(CardOrigin.JUDGE);
		assertThat(cards()).isEqualTo(1);
	}

	@Test
	void aReceivedPaperCardChangesOnlyByTwoAgain() {
		key(MARKS, ANN);
		key(MARKS, BO);
		key(OTHERS, BO);
		assertThat(paper(ANN).received()).isEqualTo(MarkLine.card(MARKS));
		assertThat(missing()).contains("Judge 2 (keyed once, by Bo Keyer; second keying missing)");
		key(OTHERS, ANN);
		assertThat(paper(ANN).received()).isEqualTo(MarkLine.card(OTHERS));
		assertThat(cards()).isEqualTo(2);
	}

	@Test
	void nothingIsKeyedAfterTheCardsAreClosed() {
		this.day.sendAll(this.performance);
		this.day.close(this.performance);
		assertRefused("card-closed", () -> key(MARKS, ANN));
		assertThat(rows()).isZero();
	}

	/** Cards opened again are keyed beside those of the next team. */
	@Test
	void aCardOpenedAgainIsKeyedByTwoAsWell() {
		this.day.sendAll(this.performance);
		this.day.close(this.performance);
		PerformanceView again = this.day.now(this.performance);
		this.context.getBean(CardReopening.class)
			.reopen(again.id(), again.version(), "A slip, said the judge.", SmallCompetition.REFEREE);
		PerformanceView next = this.day.callNext(1);
		assertThat(key(MARKS, ANN).isAgainstTablet()).isTrue();
		Visitor desk = Crew.visitor(this.context, Role.ACCOUNTANT);
		String path = "/desk/keying/" + this.day.segment(1);
		assertThat(desk.open(path).document().select(".keyed-team .number").text())
			.isEqualTo(String.valueOf(next.startNumber()));
		Visitor.Page about = desk.open(desk.open(path).document().select(".caution a").attr("href"));
		assertThat(about.document().select(".keyed-team").text()).contains("cards opened again");
		Visitor.Page difference = desk.open(about.document().select("a.button.now").attr("href"));
		assertThat(difference.document().select(".keyed-team").text()).contains("cards opened again");
		Visitor.Page settled = difference.submit("main form", Map.of("lines[0].typed", "5.6", "lines[1].typed", "5.7"));
		assertThat(settled.text()).contains("The card of Judge 2 is settled and received.", "cards opened again");
		assertThat(paper(ANN).received()).isEqualTo(MarkLine.card(MARKS));
	}

	@Test
	void aMarkThatCannotBeIsRefused() {
		for (Map<String, Integer> lines : List.of(Map.of("first", 560, "second", 575), Map.of("first", 560))) {
			assertRefused("mark-not-valid",
					() -> this.keying.key(this.performance.id(), this.seat.id(), new PaperCards.KeyedCard(lines), ANN));
		}
	}

	@Test
	void aCallStandsOnceSomethingWasKeyed() {
		key(MARKS, ANN);
		assertRefused("cards-already-sent", () -> this.run.takeBack(this.performance.id(),
				this.day.now(this.performance).version(), SmallCompetition.REFEREE));
	}

	/** Whoever comes second sees the first: twice the same card is received once. */
	@Test
	void twoWhoKeyAtTheSameMomentMakeOneCard() throws Exception {
		for (int round = 0; round < Races.ROUNDS; round++) {
			everybodyAgain();
			assertThat(Races.both(() -> key(MARKS, ANN), () -> key(MARKS, BO))).extracting(SeatPaper::stage)
				.containsExactlyInAnyOrder(SeatPaper.Stage.ONCE, SeatPaper.Stage.RECEIVED);
			assertThat(cards()).isEqualTo(1);
			assertThat(rows()).isEqualTo(2);
		}
	}

	private void everybodyAgain() {
		this.run.end(this.performance.id(), this.day.now(this.performance).version(), PerformanceStatus.NOT_FINISHED,
				"Next round.", SmallCompetition.REFEREE);
		aTeamIsOnTheIce();
	}

	@Test
	void theDatabaseKeepsWhatWasKeyed() {
		key(MARKS, ANN);
		for (String sql : List.of("update card_keying set marks = '{}'", "delete from card_keying")) {
			assertThatExceptionOfType(DataAccessException.class)
				.isThrownBy(() -> this.database.sql(sql + " where performance_id = ?")
					.param(this.performance.id().value())
					.update());
		}
	}

	private SeatPaper key(CardMarks marks, Actor who) {
		return this.keying.key(this.performance.id(), this.seat.id(), MarkLine.card(marks), who);
	}

	private SeatPaper paper(Actor viewer) {
		return this.keying.ofPerformance(this.performance.id(), viewer)
			.stream()
			.filter((paper) -> paper.seat().id().equals(this.seat.id()))
			.findFirst()
			.orElseThrow();
	}

	private List<String> missing() {
		StandView.Now now = this.stand.ofSegment(this.day.segment(1)).now();
		return (now != null) ? now.cards().missing().stream().map(Sentence::english).toList() : List.of();
	}

	private int rows() {
		return count("card_keying");
	}

	private int cards() {
		return count("card_submission");
	}

	private int count(String table) {
		return this.database.sql("select count(*) from " + table + " where performance_id = ? and seat_id = ?")
			.params(this.performance.id().value(), this.seat.id().value())
			.query(Integer.class)
			.single();
	}

	private List<String> lines(String action) {
		return this.database.sql("select after_text from record_line where subject_id = ? and action = ?")
			.params(this.performance.id().toString(), action)
			.query(String.class)
			.list();
	}

	/** All that the record says about this performance. */
	private String everyWord() {
		return String.join("\n",
				this.database
					.sql("select concat(before_text, after_text, reason) from record_line where subject_id = ?")
					.param(this.performance.id().toString())
					.query(String.class)
					.list());
	}

	private static void assertRefused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
