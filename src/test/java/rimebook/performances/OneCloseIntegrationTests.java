package rimebook.performances;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.transaction.support.TransactionTemplate;

import rimebook.paper.PaperKeying;
import rimebook.stand.Stand;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Closing the cards of a team, and looking at a segment, asks the database for nothing of
 * this more often than it has to.
 */
@WholeApplication
class OneCloseIntegrationTests {

	@Autowired
	private ApplicationContext context;

	private SmallCompetition day;

	private PerformanceView first;

	@BeforeEach
	void aTeamIsClosed() {
		this.day = SmallCompetition.running(this.context, 4, 5);
		this.day.open(1);
		this.first = this.day.callNext(1);
		this.day.sendAll(this.first);
		this.day.close(this.first);
	}

	private List<String> closeTheSecond() {
		PerformanceView second = this.day.callNext(1);
		this.day.sendAll(second);
		int version = this.day.now(second).version();
		SegmentRun run = this.context.getBean(SegmentRun.class);
		return AskedByThisThread.during(() -> run.close(second.id(), version, SmallCompetition.REFEREE));
	}

	@Test
	void asksForTheEventThePerformancesAndTheLocksOnce() {
		List<String> asked = closeTheSecond();
		assertThat(count(asked, "from segment s1_0 join event e1_0 on e1_0.id=s1_0.event_id where s1_0.id=\\?"))
			.isOne();
		assertThat(count(asked, "from performance .*where p1_0.segment_id=.* for update")).isOne();
		assertThat(count(asked, "from performance .*where p1_0.segment_id=.*start_number")).isOne();
		assertThat(count(asked, "from segment_result .* for update")).isOne();
	}

	/** The standing is made of the panel whose cards were closed. */
	@Test
	void asksForThePanelOnce() {
		assertThat(panelsRead(closeTheSecond())).isOne();
	}

	@Test
	void asksForTheTeamsOnce() {
		assertThat(count(closeTheSecond(), "from entry .*where e1_0.event_id in .*")).isOne();
	}

	/** Also where cards are open again while the next team is on the ice. */
	@Test
	void whoeverLooksAtASegmentReadsItsPanelOnce() {
		this.context.getBean(CardReopening.class)
			.reopen(this.first.id(), this.day.now(this.first).version(), "Slip.", SmallCompetition.REFEREE);
		PerformanceView second = this.day.callNext(1);
		this.day.send(second, this.day.seats().get(0), 1, new CardMarks(400, 400));
		assertThat(panelsRead(() -> this.context.getBean(Stand.class).ofSegment(this.day.segment(1)))).isOne();
		assertThat(panelsRead(() -> this.context.getBean(PaperKeying.class).unsettled(this.day.segment(1)))).isOne();
		this.day.close(this.first);
		Reskates reskates = this.context.getBean(Reskates.class);
		for (int skate = 1; skate <= 2; skate++) {
			this.context.getBean(TransactionTemplate.class)
				.executeWithoutResult((transaction) -> reskates.begin(onIce(), SmallCompetition.REFEREE));
		}
		assertThat(reskates.ofSegment(this.day.segment(1))).hasSize(2);
		assertThat(panelsRead(() -> reskates.ofSegment(this.day.segment(1)))).isOne();
	}

	private PerformanceId onIce() {
		return this.day.performances(1)
			.stream()
			.filter(PerformanceView::isOnIce)
			.map(PerformanceView::id)
			.findFirst()
			.orElseThrow();
	}

	private static long panelsRead(Runnable act) {
		return panelsRead(AskedByThisThread.during(act));
	}

	private static long panelsRead(List<String> asked) {
		long seats = count(asked, "from seat .*where s1_0.event_id=.*");
		assertThat(count(asked, "from panel_change .*")).isEqualTo(seats);
		return seats;
	}

	private static long count(List<String> asked, String form) {
		return asked.stream().filter((sql) -> sql.matches("(?s)select .*" + form)).count();
	}

}
