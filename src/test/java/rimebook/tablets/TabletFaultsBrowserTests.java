package rimebook.tablets;

import java.util.List;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.clock.InterruptionCause;
import rimebook.clock.PerformanceClock;
import rimebook.panels.Panels;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.Reskates;
import rimebook.performances.SegmentRun;
import rimebook.remarks.Remarks;
import rimebook.stand.Stand;
import rimebook.stand.StandView;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.JudgeCard;
import rimebook.testsupport.Looks;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static rimebook.testsupport.JudgeCard.expectMarking;
import static rimebook.testsupport.JudgeCard.send;
import static rimebook.testsupport.JudgeCard.touch;

/**
 * A tablet of each way of judging while the referee does whatever a referee can do, and
 * what a tablet says and goes on doing when its page has a fault.
 */
@WholeApplication
@BrowserTest
class TabletFaultsBrowserTests {

	private final ApplicationContext context;

	private final SegmentRun run;

	private final PerformanceClock clock;

	private final Reskates reskates;

	private final Browsers tablets;

	TabletFaultsBrowserTests(@Autowired ApplicationContext context, Browsers tablets) {
		this.tablets = tablets;
		this.context = context;
		this.run = context.getBean(SegmentRun.class);
		this.clock = context.getBean(PerformanceClock.class);
		this.reskates = context.getBean(Reskates.class);
	}

	@Test
	void whateverTheRefereeDoesBothTabletsShowItAndTakeACard() {
		SmallCompetition pairs = running(SmallCompetition.running(this.context, 3, 3));
		SmallCompetition points = running(PointsCompetition.running(this.context, 3, 3));
		Page pair = watched(pairs);
		Page point = watched(points);
		PerformanceView pairSkating = pairs.callNext(1);
		PerformanceView pointSkating = points.callNext(1);
		new CalledElements(this.context, pointSkating).call("I4+pi3");
		doEverything(pairs, pairSkating);
		doEverything(points, pointSkating);
		int told = this.context.getBean(Remarks.class).ofPerformance(pairSkating.id()).size();
		for (Page card : List.of(pair, point)) {
			seeAll(card, told);
			assertThat(card.locator("#contact")).hasAttribute("data-state", "good");
			card.reload();
			assertThat(card.locator("#remarks li[data-state=seen]")).hasCount(told);
		}
		takeBack(pairs, pairSkating);
		this.run.end(pointSkating.id(), points.now(pointSkating).version(), PerformanceStatus.NOT_FINISHED, "injury",
				SmallCompetition.REFEREE);
		for (Page card : List.of(pair, point)) {
			assertThat(card.locator(".card")).hasAttribute("data-state", "waiting");
		}
		pairs.callNext(1);
		points.callNext(1);
		for (Page card : List.of(pair, point)) {
			expectMarking(card);
			assertThat(card.locator("#fault")).isHidden();
		}
		touch(pair, "5", "6", "5", "7");
		send(pair);
		assertThat(this.tablets.complaints()).isEmpty();
	}

	/** Every touch of the clock and every kind of remark. */
	private void doEverything(SmallCompetition day, PerformanceView skating) {
		this.clock.start(skating.id(), touches(skating), SmallCompetition.REFEREE);
		this.clock.interrupt(skating.id(), touches(skating), InterruptionCause.MUSIC, SmallCompetition.REFEREE);
		this.clock.resume(skating.id(), touches(skating), "the second block", SmallCompetition.REFEREE);
		this.clock.interrupt(skating.id(), touches(skating), InterruptionCause.MUSIC, SmallCompetition.REFEREE);
		this.clock.reskate(skating.id(), touches(skating), Reskates.Marking.RESKATED_ONLY, SmallCompetition.REFEREE);
		PerformanceView again = day.performances(1)
			.stream()
			.filter((one) -> one.startNumber() == skating.startNumber())
			.findFirst()
			.orElseThrow();
		this.reskates.takeBack(again.id(), again.version(), SmallCompetition.REFEREE);
		this.clock.reskate(skating.id(), touches(skating), Reskates.Marking.AS_FIRST_SKATED, SmallCompetition.REFEREE);
		this.clock.takeBack(skating.id(), touches(skating), SmallCompetition.REFEREE);
		for (Remarks.RemarkKind kind : Remarks.RemarkKind.values()) {
			this.context.getBean(Remarks.class)
				.note(skating.id(), kind, "a remark of kind " + kind, SmallCompetition.REFEREE);
		}
	}

	private int touches(PerformanceView skating) {
		return this.clock.ofPerformance(skating.id()).touches();
	}

	private void takeBack(SmallCompetition day, PerformanceView skating) {
		while (this.clock.ofPerformance(skating.id()).last() != null) {
			this.clock.takeBack(skating.id(), touches(skating), SmallCompetition.REFEREE);
		}
		this.run.takeBack(skating.id(), day.now(skating).version(), SmallCompetition.REFEREE);
	}

	private static void seeAll(Page card, int remarks) {
		assertThat(card.locator("#remarks li")).hasCount(remarks);
		for (int seen = 1; seen <= remarks; seen++) {
			card.locator("#remarks li[data-state=open] button").first().click();
			assertThat(card.locator("#remarks li[data-state=seen]")).hasCount(seen);
		}
	}

	/** On a phone, where what the referee says later stands below and moves nothing. */
	@ParameterizedTest
	@CsvSource({ "390, 844", "768, 1024", "1280, 800" })
	void touchThatHasBegunIsTakenThoughTheRefereeSaysMoreMeanwhile(int width, int height) {
		SmallCompetition day = running(SmallCompetition.running(this.context, 3, 3));
		Page card = watched(day);
		card.setViewportSize(width, height);
		PerformanceView skating = day.callNext(1);
		note(skating, "one skater");
		Locator told = card.locator("#remarks li");
		assertThat(told).hasCount(1);
		told.locator("button").hover();
		card.mouse().down();
		note(skating, "another skater");
		assertThat(told).hasCount(2);
		card.mouse().up();
		assertThat(card.locator("#remarks li[data-state=seen]")).containsText("one skater");
		assertThat(told.first()).containsText("another skater");
	}

	private void note(PerformanceView skating, String text) {
		this.context.getBean(Remarks.class).note(skating.id(), Remarks.RemarkKind.FALL, text, SmallCompetition.REFEREE);
	}

	@Test
	void faultInOnePartStopsNeitherTypingNorSendingAndIsSeenAtTheStand() {
		SmallCompetition day = running(SmallCompetition.running(this.context, 3, 3));
		Page card = watched(day);
		day.callNext(1);
		assertThat(card.locator("#contact")).hasText("In contact");
		assertThat(seat(day).tablet().faulty()).isFalse();
		card.evaluate("document.getElementById('remarks').remove()");
		assertThat(card.locator("#fault")).isVisible();
		assertThat(card.locator("#contact")).isHidden();
		await().untilAsserted(() -> assertThat(seat(day).tablet().faulty()).isTrue());
		Looks.expectAccessible(card);
		touch(card, "5", "6", "5", "7");
		send(card);
		assertThat(seat(day).sent().card()).isEqualTo("5.6 / 5.7");
		assertThat(this.tablets.complaints()).isNotEmpty();
		this.tablets.complaints().clear();
		card.reload();
		assertThat(card.locator("#contact")).hasText("In contact");
		await().untilAsserted(() -> assertThat(seat(day).tablet().faulty()).isFalse());
	}

	@Test
	void faultWhereAKeyIsTouchedIsShownUntilThePageIsReloaded() {
		SmallCompetition day = running(SmallCompetition.running(this.context, 3, 3));
		Page card = watched(day);
		day.callNext(1);
		assertThat(card.locator("#contact")).hasText("In contact");
		card.evaluate("setTimeout(() => { throw new Error('made for the test'); })");
		assertThat(card.locator("#fault")).isVisible();
		touch(card, "5", "6", "5", "7");
		send(card);
		assertThat(card.locator("#fault")).isVisible();
		this.tablets.complaints().clear();
	}

	@Test
	void wordThatThePageDoesNotHaveIsShownAsItsName() {
		SmallCompetition day = running(SmallCompetition.running(this.context, 3, 3));
		Page card = watched(day);
		PerformanceView skating = day.callNext(1);
		JudgeCard.tell(card, (table) -> table.replace("\"kind\":\"FALL\"", "\"kind\":\"LATER\""));
		note(skating, "one skater");
		card.reload();
		assertThat(card.locator("#remarks li")).containsText("remark-LATER one skater");
		assertThat(card.locator("#fault")).isHidden();
		assertThat(this.tablets.complaints()).isEmpty();
	}

	private SmallCompetition running(SmallCompetition day) {
		this.context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
		day.open(1);
		return day;
	}

	/** The first judge's tablet; what its page complains about is written down. */
	private Page watched(SmallCompetition day) {
		Page card = this.tablets.screen(768, 1024);
		this.tablets.join(card, day.seats().get(0).code());
		return card;
	}

	private StandView.SeatCard seat(SmallCompetition day) {
		return this.context.getBean(Stand.class).ofSegment(day.segment(1)).now().cards().seats().get(0);
	}

}
