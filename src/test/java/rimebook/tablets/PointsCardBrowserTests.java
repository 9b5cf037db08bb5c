package rimebook.tablets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.CardReopening;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsMarks;
import rimebook.points.PointsSubmission;
import rimebook.points.PointsTasks;
import rimebook.remarks.Remarks;
import rimebook.shared.Actor;
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
import rimebook.wording.Sentence;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static rimebook.testsupport.JudgeCard.click;
import static rimebook.testsupport.JudgeCard.expectMarking;
import static rimebook.testsupport.JudgeCard.expectTruth;
import static rimebook.testsupport.JudgeCard.loseFirst;
import static rimebook.testsupport.JudgeCard.send;

@WholeApplication
@BrowserTest
class PointsCardBrowserTests {

	private static final String WITH_CONFIRMATION = "#confirm, #back, #grade-keys button, #mark-keys button, .step";

	private static final String[] TWELVE = { "I4+pi3", "ME4", "NHE3+s4", "TwE3", "AC2", "PB3", "SySp2", "GL3<<",
			"I3+pi2", "TwE2", "CrI1", "Pa4" };

	private static final String CARDS = "**/api/points-cards/*";

	private final SmallCompetition day;

	private final JudgeTables tables;

	private final ApplicationContext context;

	private final SeatView seat;

	private final PerformanceView skating;

	private final CalledElements called;

	private final Browsers tablets;

	PointsCardBrowserTests(@Autowired ApplicationContext context, Browsers tablets) {
		this.tablets = tablets;
		this.context = context;
		this.day = PointsCompetition.running(context, 3, 3);
		this.tables = context.getBean(JudgeTables.class);
		context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		this.seat = this.day.seats().get(0);
		this.day.open(1);
		this.skating = this.day.callNext(1);
		this.called = new CalledElements(context, this.skating);
	}

	@Test
	void elementIsOnTheCardWithinASecondOfItsCallAndIsGradedWithOneTouch() {
		Page card = this.tablets.joined(this.seat.code());
		assertThat(card.locator("#none-called")).isVisible();
		this.called.call("I4+pi3");
		long called = System.nanoTime();
		assertThat(line(card, "I4+pi3")).isVisible();
		assertThat(System.nanoTime() - called).isLessThan(1_500_000_000L);
		card.click("[data-grade='2']");
		assertThat(given(card, "I4+pi3")).hasText("+2");
		this.called.insert("ME4");
		assertThat(atHand(card)).hasText("ME4");
		card.click("[data-grade='-1']");
		assertThat(given(card, "ME4")).hasText("−1");
	}

	@Test
	void nineteenTouchesGiveAndSendACardOfTwelveElementsAndThreeComponents() {
		this.called.call(TWELVE);
		Page card = this.tablets.touchScreen(768, 1024);
		this.tablets.join(card, this.seat.code());
		assertThat(card.locator("#send")).hasText("Still missing: 12 grades, 3 components");
		card.evaluate("window.touches = 0; addEventListener('click', () => window.touches++, true)");
		tap(card, "grade", "2", "-1", "0", "1", "3", "2", "1", "0", "-1", "-2", "-5", "5");
		tap(card, "whole", "7", "10", "8");
		tap(card, "step", "1/Composition", "-1/Presentation");
		expectTruth(card, "being-typed");
		tap(card, "step", "2/Skating Skills");
		card.tap("#send");
		expectTruth(card, "received");
		assertThat(card.evaluate("window.touches")).isEqualTo(19);
		assertThat(ownCard()).isEqualTo("[2, -1, 0, 1, 3, 2, 1, 0, -1, -2, -5, 5] "
				+ "{Composition=725, Presentation=975, Skating Skills=850} 1");
	}

	@Test
	void keysOfAKeyboardDoTheSameAndAreSaid() {
		this.called.call("I4+pi3", "ME4");
		Page card = this.tablets.joined(this.seat.code());
		expectMarking(card);
		card.keyboard().type("2");
		assertThat(card.locator("#spoken"))
			.hasText("Element 1, I4+pi3: +2. Element 2, ME4, move element, level 4, empty");
		card.keyboard().type("-1");
		card.keyboard().press("Enter");
		card.keyboard().type("7,25");
		card.keyboard().type("10");
		card.keyboard().type("7.5");
		card.keyboard().press("Enter");
		assertThat(card.locator("#send")).hasText("Send the card");
		card.keyboard().press("ArrowUp");
		card.keyboard().press("ArrowRight");
		assertThat(card.locator("#components .line-given")).hasText(new String[] { "7.25", "10.00", "7.75" });
		card.keyboard().press("Enter");
		expectTruth(card, "received");
		assertThat(ownCard()).isEqualTo("[2, -1] {Composition=725, Presentation=1000, Skating Skills=775} 1");
	}

	@Test
	void markThatDoesNotExistIsRefusedAtTheKey() {
		this.called.call("ME4");
		Page card = this.tablets.joined(this.seat.code());
		click(card, "whole", "0", "10");
		click(card, "step", "-1/Composition");
		assertThat(card.locator("#key-refusal")).hasText("The lowest mark is 0.25");
		click(card, "step", "1/Presentation");
		assertThat(card.locator("#key-refusal")).hasText("The highest mark is 10.00");
		assertThat(card.locator("#components .line-given")).hasText(new String[] { "0.25", "10.00", "–" });
	}

	@Test
	void whatIsHalfTypedIsThereAfterAReload() {
		this.called.call("I4+pi3", "ME4");
		Page card = this.tablets.joined(this.seat.code());
		click(card, "grade", "2", "3");
		click(card, "line", "component/Composition");
		card.keyboard().type("7.");
		JudgeCard.reload(card);
		assertThat(given(card, "ME4")).hasText("+3");
		assertThat(card.locator("#components .line-given").first()).hasText("7.––");
		card.keyboard().type("5");
		card.keyboard().press("Enter");
		assertThat(card.locator("#components .line-given").first()).hasText("7.50");
	}

	@Test
	void secondTouchOfADoubleTapFallsToNoOtherElement() {
		this.called.call("I4+pi3", "ME4", "AC2");
		Page card = withAClockOfItsOwn();
		card.dblclick("[data-grade='2']");
		assertThat(card.locator("#key-refusal")).hasText("Touched twice, counted once");
		assertThat(card.locator("#elements .line-given")).hasText(new String[] { "+2", "–", "–" });
		card.clock().fastForward(400);
		click(card, "grade", "2", "-1");
		assertThat(card.locator("#elements .line-given")).hasText(new String[] { "+2", "+2", "−1" });
	}

	/** A tablet whose time can be moved on. */
	private Page withAClockOfItsOwn() {
		Page card = this.tablets.screen(768, 1024);
		card.clock().install();
		this.tablets.join(card, this.seat.code());
		return card;
	}

	@Test
	void whatWasDoneLastIsTakenBackStepByStepWhereverTheCardIs() {
		this.called.call("I4+pi3", "ME4");
		Page card = this.tablets.joined(this.seat.code());
		click(card, "grade", "2", "-1");
		click(card, "whole", "7");
		click(card, "line^", "element");
		assertThat(card.locator("#back")).hasText("Take backComposition 7.00");
		card.click("#back");
		assertThat(card.locator("#components .line-given").first()).hasText("–");
		assertThat(card.locator("#back")).hasText("Take back2 ME4 −1");
		card.keyboard().press("Backspace");
		card.keyboard().press("Backspace");
		assertThat(card.locator("#elements .line-given")).hasText(new String[] { "–", "–" });
		assertThat(atHand(card)).hasText("I4+pi3");
	}

	@Test
	void elementCalledWhileAnotherIsLookedAtMovesNothing() {
		this.called.call("I4+pi3", "ME4");
		Page card = this.tablets.joined(this.seat.code());
		click(card, "grade", "2", "3");
		click(card, "line^", "element");
		assertThat(atHand(card)).hasText("I4+pi3");
		double above = card.locator("#grade-keys").boundingBox().y;
		this.called.insert("AC2");
		assertThat(card.locator("#at-open")).hasText("Waiting: 3 AC2");
		assertThat(atHand(card)).hasText("I4+pi3");
		assertThat(card.locator("#grade-keys").boundingBox().y).isEqualTo(above);
		click(card, "grade", "1");
		assertThat(atHand(card)).hasText("AC2");
	}

	@Test
	void lowestGradesThroughoutAreAskedAboutOnce() {
		this.called.call("I4+pi3", "ME4");
		Page card = withAClockOfItsOwn();
		click(card, "grade", "-5");
		card.clock().fastForward(400);
		click(card, "grade", "-5");
		click(card, "whole", "7", "8", "6");
		card.click("#send");
		assertThat(card.locator("#odd-marks li")).hasText("Every grade of the card is −5, the lowest.");
		Looks.expectAccessible(card);
		card.keyboard().press("Enter");
		assertThat(card.locator("#odd")).isHidden();
		expectTruth(card, "being-typed");
		send(card);
	}

	@Test
	void componentsOutOfTheUsualRangeOrFarFromTheJudgesOwnAreAskedAbout() {
		this.called.call("ME4");
		Page card = this.tablets.joined(this.seat.code());
		click(card, "grade", "2");
		click(card, "whole", "1", "5", "6");
		click(card, "step", "-1/Composition");
		card.click("#send");
		assertThat(card.locator("#odd-marks li")).hasText("Composition 0.75: marks below 1.00 are rare.");
		card.click("#odd button[value=send]");
		expectTruth(card, "received");
		new CalledElements(this.context, skateOn(card)).call("ME4");
		click(card, "grade", "2");
		click(card, "whole", "4", "8", "6");
		card.click("#send");
		assertThat(card.locator("#odd-marks li"))
			.hasText(new String[] { "Composition 4.00: your mark of the earlier team is 0.75.",
					"Presentation 8.00: your mark of the earlier team is 5.00." });
	}

	@Test
	void cardWhoseAnswerWasLostIsRepeatedUnderOneIdentityAndCountsOnce() {
		Page card = filled();
		List<String> sent = new CopyOnWriteArrayList<>();
		card.route(CARDS, (route) -> {
			sent.add(route.request().url());
			loseFirst(route, sent.size());
		});
		card.click("#send");
		card.waitForCondition(() -> sent.size() > 1);
		expectTruth(card, "received");
		assertThat(sent.stream().distinct()).hasSize(1);
		assertThat(ownCard()).endsWith(" 1");
	}

	@Test
	void cardWithoutNetworkWaitsOverAReloadAndTheStandHearsOfIt() {
		Page card = filled();
		card.route(CARDS, Route::abort);
		card.click("#send");
		expectTruth(card, "kept");
		JudgeCard.reload(card);
		expectTruth(card, "kept");
		await().untilAsserted(() -> assertThat(seats().get(0).tablet().waiting()).isOne());
		card.unroute(CARDS);
		expectTruth(card, "received");
		await().untilAsserted(() -> assertThat(seats().get(0).tablet().waiting()).isZero());
		assertThat(ownCard()).endsWith(" 1");
	}

	@Test
	void changedLevelLeavesTheCardReceived() {
		Page card = filled();
		send(card);
		this.called.change(2, "ME3");
		assertThat(given(card, "ME3")).hasText("+3");
		expectTruth(card, "received");
		assertThat(card.locator("#confirm")).isHidden();
	}

	@Test
	void elementThatWasTakenOutIsConfirmedAndTheCardSentWithoutIt() {
		Page card = filled();
		send(card);
		this.called.takeOut(1);
		assertThat(card.locator("#send")).hasText("Still missing: 1 to confirm");
		card.click("#elements .gone button");
		assertThat(card.locator("#at-more")).containsText("taken out, your +2 no longer counts");
		card.click("#confirm");
		send(card);
		assertThat(ownCard()).startsWith("[3]").endsWith(" 2");
	}

	@Test
	void anotherElementKeepsTheGradeAndIsConfirmed() {
		Page card = filled();
		send(card);
		this.called.change(2, "AC2");
		assertThat(line(card, "AC2")).containsText("changed");
		assertThat(given(card, "AC2")).hasText("+3");
		card.click("#elements [data-state=confirm] button");
		assertThat(card.locator("#at-more")).containsText("another element, was ME4");
		expectTruth(card, "being-changed");
		assertThat(card.locator("#send")).hasText("Still missing: 1 to confirm");
		assertThat(missing()).contains("Judge 1: confirm element 2, now AC2");
		Looks.expectAccessible(card);
		card.click("#confirm");
		assertThat(card.locator("#send")).hasText("Send the change");
		send(card);
		assertThat(missing()).doesNotContain("Judge 1: confirm element 2, now AC2");
		assertThat(ownCard()).endsWith(" 2");
	}

	@Test
	void anotherTabletIsToldToConfirmToo() {
		Page card = filled();
		send(card);
		this.called.change(2, "AC2");
		Page newer = this.tablets.takingOver(this.seat.code());
		assertThat(line(newer, "AC2")).containsText("changed");
		assertThat(newer.locator("#at-more")).containsText("another element than the one you graded");
		newer.keyboard().press("Enter");
		newer.keyboard().press("Enter");
		expectTruth(newer, "received");
		assertThat(card.locator("h1")).hasText("This tablet no longer has the seat");
		assertThat(ownCard()).endsWith(" 2");
	}

	@Test
	void elementUnderReviewAndElementWithoutValueAreShown() {
		this.called.call("I4+pi3", "ME4");
		this.called.review(1);
		this.called.devalue(2);
		Page card = this.tablets.joined(this.seat.code());
		assertThat(line(card, "I4+pi3")).containsText("review");
		assertThat(line(card, "ME4")).containsText("no value");
		assertThat(card.locator("#elements button")).hasCount(1);
	}

	@Test
	void elementThatIsCalledAfterSendingIsAskedFor() {
		Page card = filled();
		send(card);
		this.called.insert("AC2");
		assertThat(card.locator("#send")).hasText("Still missing: 1 grade");
		card.click("[data-grade='1']");
		send(card);
		assertThat(ownCard()).startsWith("[2, 3, 1]").endsWith(" 2");
	}

	@Test
	void twoVersionsAreShownSideBySideAndTheJudgeChooses() {
		Page card = filled();
		card.route(CARDS, Route::abort);
		card.click("#send");
		expectTruth(card, "kept");
		elsewhere(1, 5);
		card.unroute(CARDS);
		assertThat(card.locator("#differ")).isVisible();
		assertThat(card.locator("#differ-rows tr").nth(1)).hasText("Element 2, ME4+3+5");
		assertThat(card.locator("#differ-rows tr.other")).hasCount(2);
		assertThat(card.locator("#differ-received")).containsText("Received at ");
		Looks.expectAccessible(card);
		card.keyboard().press("Escape");
		card.keyboard().type("4");
		assertThat(card.locator("#differ")).isVisible();
		card.click("[data-choice=mine]");
		expectTruth(card, "received");
		assertThat(ownCard()).startsWith("[2, 3]").endsWith(" 2");
	}

	@Test
	void receivedVersionIsKeptWhenTheJudgeSaysSo() {
		Page card = filled();
		card.route(CARDS, Route::abort);
		card.click("#send");
		expectTruth(card, "kept");
		elsewhere(1, 5);
		card.unroute(CARDS);
		card.click("[data-choice=received]");
		expectTruth(card, "received");
		assertThat(given(card, "ME4")).hasText("+5");
		assertThat(ownCard()).startsWith("[5, 5]").endsWith(" 1");
	}

	@Test
	void earlierCardsAreLookedUpAlsoWithoutNetwork() {
		Page card = filled();
		send(card);
		skateOn(card);
		assertThat(card.locator("#earlier-cards li")).hasCount(1);
		BrowserContext tablet = card.context();
		tablet.setOffline(true);
		card.click("#earlier-open");
		assertThat(card.locator("#earlier-cards li")).containsText("ME4 +3");
		assertThat(card.locator("#earlier-cards li")).containsText("Composition 7.25");
		Looks.expectAccessible(card);
		card.keyboard().press("Enter");
		assertThat(card.locator("#earlier")).isHidden();
	}

	@Test
	void cardThatWasOpenedAgainHasItsOwnElements() {
		Page card = filled();
		send(card);
		closeWithTheOthersCards();
		PerformanceView next = this.day.callNext(1);
		new CalledElements(this.context, next).call("AC2");
		assertThat(line(card, "AC2")).isVisible();
		card.click("[data-grade='4']");
		this.context.getBean(CardReopening.class)
			.reopen(this.skating.id(), this.day.now(this.skating).version(), "a mark mistyped",
					SmallCompetition.REFEREE);
		card.click("#turn");
		assertThat(card.locator("#elements .line-code")).hasText(new String[] { "I4+pi3", "ME4" });
		expectTruth(card, "received");
		card.click("[data-line^=element] >> nth=1");
		card.click("[data-grade='-2']");
		send(card);
		card.click("#turn");
		assertThat(given(card, "AC2")).hasText("+4");
		expectTruth(card, "being-typed");
		assertThat(this.context.getBean(PointsSubmission.class)
			.ofPerformance(this.skating.id())
			.get(this.seat.id())
			.marks()
			.grades()
			.values()).containsExactly(2, -2);
	}

	private void closeWithTheOthersCards() {
		elsewhere(this.day.seats().get(1), 1, 0);
		elsewhere(this.day.seats().get(2), 1, 0);
		this.context.getBean(ListAuthorisations.class)
			.authorise(this.skating.id(), task().called().listSequence(), SmallCompetition.REFEREE);
		this.day.close(this.skating);
	}

	@Test
	void tabletShowsAllOfTheCardWithKeysOfFourteenMillimetres() {
		this.called.call(TWELVE);
		this.called.insert("PL4");
		this.called.insert("TrE3");
		note("one skater fell at the second intersection");
		note("5 s too long");
		Page card = this.tablets.joined(this.seat.code());
		JudgeCard.tell(card, JudgeCard::withALongName);
		assertThat(card.locator("h1")).hasText(JudgeCard.LONG_NAME);
		assertThat(card.locator("#remarks li[data-state=open]")).hasCount(2);
		JudgeCard.onEveryTablet(card, () -> expectKeys(card, "#back, #grade-keys button, #mark-keys button, .step"));
		click(card, "grade", "2", "1", "0", "1", "2", "3");
		this.called.change(2, "AC2");
		card.click("#elements [data-state=confirm] button");
		JudgeCard.onEveryTablet(card, () -> expectKeys(card, WITH_CONFIRMATION));
		JudgeCard.tell(card, JudgeCard::withOneOpenedAgain);
		assertThat(card.locator("#reopened")).isVisible();
		JudgeCard.onEveryTablet(card, () -> {
			expectKeys(card, WITH_CONFIRMATION);
			Looks.expectAccessible(card);
		});
	}

	/**
	 * Expect all in sight and no key cut off. Eleven keys side by side fill the width of
	 * a tablet held upright; they are at least as high as any other key.
	 */
	private static void expectKeys(Page card, String keys) {
		assertThat(card.evaluate("[document.documentElement.scrollHeight, document.documentElement.scrollWidth]"))
			.isEqualTo(List.of(card.viewportSize().height, card.viewportSize().width));
		for (Locator key : card.locator(keys).all()) {
			var box = key.boundingBox();
			assertThat(box.height).isGreaterThanOrEqualTo(84);
			assertThat(box.width).isGreaterThanOrEqualTo(Math.min(84, (card.viewportSize().width - 1) / 11.0 - 1));
			assertThat((Boolean) key.evaluate(
					"""
							key => [0.04, 0.96].every(at => { const box = key.getBoundingClientRect();
								return key.contains(document.elementFromPoint(box.x + box.width / 2, box.y + box.height * at)); })"""))
				.as("in sight: " + key.textContent())
				.isTrue();
		}
	}

	@Test
	void phoneNeedsNoScrollingSideways() {
		this.called.call("I4+pi3", "ME4");
		Page card = this.tablets.joined(this.seat.code());
		for (int width : List.of(320, 390)) {
			card.setViewportSize(width, 844);
			expectMarking(card);
			assertThat((Integer) card.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(width);
		}
		Looks.expectAccessible(card);
	}

	/** The team does not finish, and the next one is called. */
	private PerformanceView skateOn(Page card) {
		this.context.getBean(SegmentRun.class)
			.end(this.skating.id(), this.day.now(this.skating).version(), PerformanceStatus.NOT_FINISHED,
					"torn costume", SmallCompetition.REFEREE);
		PerformanceView next = this.day.callNext(1);
		assertThat(card.locator("#number")).hasText("2");
		return next;
	}

	/** A tablet with a card of two elements that is whole and not sent yet. */
	private Page filled() {
		this.called.call("I4+pi3", "ME4");
		Page card = this.tablets.joined(this.seat.code());
		click(card, "grade", "2", "3");
		for (String component : List.of("Composition", "Presentation", "Skating Skills")) {
			card.click("[data-line='component/" + component + "']");
			click(card, "whole", "7");
			click(card, "step", "1/" + component);
		}
		assertThat(card.locator("#send")).hasText("Send the card");
		return card;
	}

	/** The same seat's card with that grade throughout, from elsewhere. */
	private void elsewhere(int sequence, int grade) {
		elsewhere(this.seat, sequence, grade);
	}

	private void elsewhere(SeatView judge, int sequence, int grade) {
		Map<UUID, Integer> grades = new LinkedHashMap<>();
		task().called().elements().forEach((element) -> grades.put(element.id(), grade));
		this.context.getBean(PointsSubmission.class)
			.submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), this.skating.id(), sequence,
					new PointsMarks(grades, Map.of("Composition", 725, "Presentation", 725, "Skating Skills", 725))),
					judge.id(), new Actor(judge.label(), "judge", "test"));
	}

	private void note(String text) {
		this.context.getBean(Remarks.class)
			.note(this.skating.id(), Remarks.RemarkKind.FALL, text, SmallCompetition.REFEREE);
	}

	private PointsTasks.PointsTask task() {
		return this.tables.tableOf(this.seat.id()).marking().points();
	}

	private List<StandView.SeatCard> seats() {
		return this.context.getBean(Stand.class).ofSegment(this.day.segment(1)).now().cards().seats();
	}

	private List<String> missing() {
		return this.context.getBean(Stand.class)
			.ofSegment(this.day.segment(1))
			.now()
			.cards()
			.missing()
			.stream()
			.map(Sentence::english)
			.toList();
	}

	/** What the service holds of this seat: grades in order, components, sequence. */
	private String ownCard() {
		PointsTasks.PointsTask task = task();
		List<Integer> grades = task.called()
			.elements()
			.stream()
			.map((element) -> task.card().marks().grades().get(element.id()))
			.toList();
		return grades + " " + new TreeMap<>(task.card().marks().components()) + " " + task.card().sequence();
	}

	private static Locator line(Page card, String code) {
		return card.locator("#elements li").filter(new Locator.FilterOptions().setHasText(code));
	}

	private static Locator given(Page card, String code) {
		return line(card, code).locator(".line-given");
	}

	private static Locator atHand(Page card) {
		return card.locator("#at-name");
	}

	private static void tap(Page card, String datum, String... keys) {
		for (String key : keys) {
			card.tap("[data-" + datum + "='" + key + "']");
		}
	}

}
