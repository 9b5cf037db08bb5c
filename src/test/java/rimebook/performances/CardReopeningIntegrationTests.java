package rimebook.performances;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.results.ResultPublication;
import rimebook.results.ResultVersion;
import rimebook.results.SegmentResultView;
import rimebook.results.Signatories;
import rimebook.results.Standings;
import rimebook.shared.RimebookException;
import rimebook.tablets.JudgeTable;
import rimebook.tablets.JudgeTables;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

@WholeApplication
class CardReopeningIntegrationTests {

	private static final CardMarks CHANGED = new CardMarks(590, 600);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private CardReopening reopening;

	@Autowired
	private JudgeTables tables;

	@Autowired
	private Standings standings;

	@Autowired
	private ResultPublication publication;

	@Autowired
	private JdbcClient database;

	@Test
	void aCardIsChangedWhileTheNextTeamIsOnTheIceAndTheStandingFollowsOnClosing() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		SegmentId segment = day.open(1);
		day.skateNext(1);
		PerformanceView first = day.performances(1).get(0);
		PerformanceView next = day.callNext(1);
		reopen(day, first);
		day.send(first, day.seats().get(1), 2, CHANGED);
		assertThat(latest(segment).number()).isOne();
		assertThat(firstMark(segment, first, 1)).isNotEqualTo(CHANGED.first());
		day.close(first);
		assertThat(latest(segment).number()).isEqualTo(2);
		assertThat(latest(segment).note())
			.isEqualTo("The cards of start number 1 were opened and closed again: Judge 2 typed a wrong mark");
		assertThat(firstMark(segment, first, 1)).isEqualTo(CHANGED.first());
		assertThat(result(segment).onIce()).isEqualTo(next.entry());
		assertThat(linesAbout(first)).containsSubsequence("cards.closed", "cards.reopened", "card.received",
				"cards.closed");
	}

	@Test
	void everyTabletSeesWhatIsOpenAgainBesideWhatIsOnTheIce() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateNext(1);
		PerformanceView first = day.performances(1).get(0);
		PerformanceView next = day.callNext(1);
		assertThat(this.tables.tableOf(day.seats().get(0).id()).marking().reopened()).isNull();
		reopen(day, first);
		JudgeTable table = this.tables.tableOf(day.seats().get(0).id());
		assertThat(table.course().now().performance()).isEqualTo(next.id());
		assertThat(table.marking().reopened().performance().performance()).isEqualTo(first.id());
		assertThat(table.marking().reopened().points()).isNull();
		assertThat(table.course().cards()).singleElement().matches((card) -> !card.closed());
	}

	@Test
	void noOtherCardsAreClosedAndNothingIsPublishedWhileSomeAreOpenAgain() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		SegmentId segment = day.open(1);
		day.skateNext(1);
		PerformanceView first = day.performances(1).get(0);
		PerformanceView next = day.callNext(1);
		day.sendAll(next);
		reopen(day, first);
		refused("another-reopened", () -> day.close(next));
		refused("cards-reopened",
				() -> this.context.getBean(SegmentRun.class)
					.end(next.id(), day.now(next).version(), PerformanceStatus.NOT_FINISHED, "A fall",
							SmallCompetition.REFEREE));
		assertThat(day.now(next).status()).isEqualTo(PerformanceStatus.ON_ICE);
		assertThat(latest(segment).number()).isOne();
		day.close(first);
		day.close(next);
		assertThat(latest(segment).number()).isEqualTo(3);
	}

	@Test
	void onlyTheLastClosedCardsAreOpenedAgain() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		day.open(1);
		day.skateNext(1);
		day.skateNext(1);
		refused("later-cards-closed", () -> reopen(day, day.performances(1).get(0)));
		reopen(day, day.performances(1).get(1));
		refused("performance-state", () -> reopen(day, day.performances(1).get(1)));
		refused("performance-state", () -> reopen(day, day.performances(1).get(2)));
	}

	@Test
	void aPostedResultIsNotSignedWhileCardsAreOpenAgain() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		PerformanceView last = day.performances(1).get(1);
		reopen(day, last);
		refused("segment-not-complete",
				() -> this.publication.post(segment, result(segment).version(), SmallCompetition.ACCOUNTANT));
		day.close(last);
		this.publication.post(segment, result(segment).version(), SmallCompetition.ACCOUNTANT);
		sign(segment, Signatories.Signatory.REFEREE);
		reopen(day, last);
		assertThat(result(segment).signatures().referee().name()).isEmpty();
		refused("signature-held-back", () -> sign(segment, Signatories.Signatory.REFEREE));
		day.close(last);
		sign(segment, Signatories.Signatory.REFEREE);
		sign(segment, Signatories.Signatory.ACCOUNTANT);
		refused("result-official", () -> reopen(day, last));
	}

	@Test
	void cardsStayClosedOnceTheNextSegmentIsDrawnUponThem() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		day.skateRest(1);
		day.open(2);
		refused("later-segment-open", () -> reopen(day, day.performances(1).get(1)));
	}

	@Test
	void theResultsDeskSaysThatCardsWereOpenedAgain() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		day.skateRest(1);
		reopen(day, day.performances(1).get(1));
		assertThat(Crew.visitor(this.context, Role.ACCOUNTANT).open("/desk/results/" + segment).text())
			.contains("The cards of No. 2 were opened again: Judge 2 typed a wrong mark", "the last version");
	}

	private void reopen(SmallCompetition day, PerformanceView performance) {
		this.reopening.reopen(performance.id(), day.now(performance).version(), "Judge 2 typed a wrong mark",
				SmallCompetition.REFEREE);
	}

	private void sign(SegmentId segment, Signatories.Signatory signatory) {
		this.publication.sign(segment, result(segment).version(), signatory,
				(signatory == Signatories.Signatory.REFEREE) ? SmallCompetition.REFEREE : SmallCompetition.ACCOUNTANT);
	}

	private SegmentResultView result(SegmentId segment) {
		return this.standings.result(segment).orElseThrow();
	}

	private ResultVersion latest(SegmentId segment) {
		return this.standings.latest(segment).orElseThrow();
	}

	private int firstMark(SegmentId segment, PerformanceView performance, int judge) {
		return latest(segment).standing()
			.rows()
			.stream()
			.filter((row) -> row.entry().equals(performance.entry().toString()))
			.findFirst()
			.orElseThrow()
			.cards()
			.get(judge)
			.first();
	}

	private List<String> linesAbout(PerformanceView performance) {
		return this.database.sql("select action from record_line where subject_id = ? order by number")
			.param(performance.id().toString())
			.query(String.class)
			.list();
	}

	private static void refused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
	}

}
