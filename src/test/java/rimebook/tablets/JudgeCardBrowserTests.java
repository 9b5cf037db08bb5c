package rimebook.tablets;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.panels.Panels;
import rimebook.performances.Amending;
import rimebook.performances.Amendments;
import rimebook.performances.CardReopening;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.placement.MarkWords;
import rimebook.placement.MarksAmendment;
import rimebook.remarks.Remarks;
import rimebook.stand.Stand;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.JudgeCard;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;
import rimebook.wording.Sentence;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static rimebook.testsupport.JudgeCard.expectMarking;
import static rimebook.testsupport.JudgeCard.expectTruth;
import static rimebook.testsupport.JudgeCard.loseFirst;
import static rimebook.testsupport.JudgeCard.send;
import static rimebook.testsupport.JudgeCard.touch;

@WholeApplication
@BrowserTest
class JudgeCardBrowserTests {

	private static final String CARDS = "**/api/cards/*";

	private static final String TABLE = "**/api/judge/table*";

	/** A performance that this service does not know. */
	private static final String GONE = "01a20000-0000-7000-8000-0000000000cc";

	/** Puts texts where the card keeps them, while no card is open. */
	private static final String KEEP = """
			(kept) => new Promise((resolve, reject) => {
				const asked = indexedDB.open("rimebook", 1);
				asked.onerror = reject;
				asked.onsuccess = () => {
					const change = asked.result.transaction("shelf", "readwrite");
					Object.entries(kept).forEach(([key, text]) => change.objectStore("shelf").put(text, key));
					change.onabort = reject;
					change.oncomplete = () => { asked.result.close(); resolve(); };
				};
			})""";

	private final SmallCompetition day;

	private final JudgeTables tables;

	private final SegmentRun run;

	private final Stand stand;

	private final CardReopening reopening;

	private final ApplicationContext context;

	private final Amendments amendments;

	private final String code;

	private final PerformanceView closed;

	private final PerformanceView skating;

	private final Browsers tablets;

	JudgeCardBrowserTests(@Autowired ApplicationContext context, Browsers tablets) {
		this.tablets = tablets;
		this.context = context;
		this.day = SmallCompetition.running(context, 3, 3);
		this.tables = context.getBean(JudgeTables.class);
		this.run = context.getBean(SegmentRun.class);
		this.stand = context.getBean(Stand.class);
		this.reopening = context.getBean(CardReopening.class);
		this.amendments = context.getBean(Amendments.class);
		context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		this.code = this.day.seats().get(0).code();
		this.day.open(1);
		this.day.skateNext(1);
		this.closed = this.day.performances(1).get(0);
		this.skating = this.day.callNext(1);
	}

	@Test
	void fiveTouchesWithoutThePointGiveAndSendTwoMarks() {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "5", "7");
		assertThat(card.locator("#first .typed")).hasText("5.6");
		assertThat(card.locator("#second .typed")).hasText("5.7");
		send(card);
		assertThat(ownMarks()).containsExactly("56/57 1");
	}

	@Test
	void theKeysOfAKeyboardDoTheSame() {
		Page card = this.tablets.joined(this.code);
		expectMarking(card);
		card.keyboard().type("5,6");
		card.keyboard().type("60");
		card.keyboard().press("Enter");
		expectTruth(card, "received");
		assertThat(ownMarks()).containsExactly("56/60 1");
	}

	@Test
	void aMarkAboveSixIsRefusedAtTheKeyAndChangesNothing() {
		Page card = this.tablets.joined(this.code);
		touch(card, "6", "1");
		assertThat(card.locator("#key-refusal")).hasText("A mark is 0.0 to 6.0");
		assertThat(card.locator("#first .typed")).hasText("6.");
		assertThat(card.locator("#send")).isDisabled();
	}

	@Test
	void aZeroIsAskedForTwice() {
		Page card = this.tablets.joined(this.code);
		touch(card, "0", "0", "4", "0");
		card.click("#send");
		assertThat(card.locator("#zero")).isVisible();
		Looks.expectAccessible(card);
		card.click("#zero button[value=back]");
		assertThat(card.locator("#zero")).isHidden();
		assertThat(ownMarks()).isEmpty();
		card.click("#send");
		card.click("#zero button[value=send]");
		expectTruth(card, "received");
		assertThat(ownMarks()).containsExactly("0/40 1");
	}

	@Test
	void oddMarksAreAskedAboutOnceAndThenBelieved() {
		Page card = this.tablets.joined(this.code);
		touch(card, "2", "6", "5", "7");
		card.click("#send");
		assertThat(card.locator("#odd-marks li").first()).hasText("The two marks are far apart: 2.6 and 5.7.");
		Looks.expectAccessible(card);
		card.keyboard().press("Enter");
		assertThat(card.locator("#odd")).isHidden();
		expectTruth(card, "being-typed");
		assertThat(ownMarks()).isEmpty();
		send(card);
		assertThat(ownMarks()).containsExactly("26/57 1");
	}

	@Test
	void aMarkBelowTheUsualRangeIsAskedAboutForTheFirstTeamToo() {
		SmallCompetition fresh = SmallCompetition.running(this.context, 2, 3);
		this.context.getBean(Panels.class).issueCodes(fresh.event().id(), SmallCompetition.REFEREE);
		fresh.open(1);
		fresh.callNext(1);
		Page card = this.tablets.joined(fresh.seats().get(0).code());
		touch(card, "0", "6", "0", "8");
		card.click("#send");
		assertThat(card.locator("#odd-marks li")).hasText(new String[] {
				"Required elements 0.6: marks below 1.0 are rare.", "Presentation 0.8: marks below 1.0 are rare." });
		card.click("#odd button[value=send]");
		expectTruth(card, "received");
		assertThat(this.tables.tableOf(fresh.seats().get(0).id()).course().cards()).hasSize(1);
	}

	@Test
	void aMarkFarFromAllOfTheJudgesOwnIsAskedAboutBeforeItIsSent() {
		CardMarks earlier = closedMarks();
		Page card = this.tablets.joined(this.code);
		touch(card, "1", "2", "1", "3");
		card.click("#send");
		assertThat(card.locator("#odd-marks li")).hasText(new String[] {
				"Required elements 1.2: your mark of the earlier team is " + figure(earlier.first()) + ".",
				"Presentation 1.3: your mark of the earlier team is " + figure(earlier.second()) + "." });
		card.click("#odd button[value=send]");
		expectTruth(card, "received");
		assertThat(ownMarks()).containsExactly("12/13 1");
	}

	@Test
	void aCorrectionOfAClosedCardIsToldWithBothValuesUntilTheJudgeUnderstood() {
		CardMarks given = closedMarks();
		CardMarks corrected = new CardMarks(given.first() + 10, given.second());
		Page card = this.tablets.joined(this.code);
		expectMarking(card);
		this.amendments.apply(MarksAmendment.on(this.closed.id(), this.day.seats().get(0).id(), corrected),
				new MarksAmendment(given),
				new Amending.Approval("misread", Sentence.said("by two"), SmallCompetition.REFEREE));
		assertThat(card.locator("#refusals li span")).hasText(
				"No. 1, Short programme: after closing two officials corrected your card from %s / %s to %s / %s. Ask the referee if you want to know why."
					.formatted(figure(given.first()), figure(given.second()), figure(corrected.first()),
							figure(corrected.second())));
		Looks.expectAccessible(card);
		Page other = this.tablets.joined(this.day.seats().get(1).code());
		expectMarking(other);
		assertThat(other.locator("#refusals")).isHidden();
		JudgeCard.reload(card);
		card.click("#refusals button");
		assertThat(card.locator("#refusals")).isHidden();
		JudgeCard.reload(card);
		expectMarking(card);
		assertThat(card.locator("#own")).containsText(figure(corrected.first()));
		assertThat(card.locator("#refusals")).isHidden();
	}

	private CardMarks closedMarks() {
		return this.tables.tableOf(this.day.seats().get(0).id())
			.course()
			.cards()
			.stream()
			.map((card) -> new CardMarks(card.version().first(), card.version().second()))
			.findFirst()
			.orElseThrow();
	}

	private static String figure(int hundredths) {
		return MarkWords.decimal(hundredths).toString();
	}

	@Test
	void zeroIsRefusedAtTheKeyWhereItMeansNotSkated() {
		Page card = this.tablets.joined(this.code);
		JudgeCard.tell(card, (table) -> table.replace("\"zeroMark\":\"COUNT\"", "\"zeroMark\":\"REFUSE\""));
		JudgeCard.reload(card);
		touch(card, "0", "0");
		assertThat(card.locator("#key-refusal")).hasText("0.0 means “not skated”: the lowest mark is 0.1");
		touch(card, "1", "4", "0");
		assertThat(card.locator("#first .typed")).hasText("0.1");
		assertThat(card.locator("#send")).isEnabled();
	}

	@Test
	void aCardWithoutContactIsKeptOverAReloadUnderOneIdentity() {
		Page card = this.tablets.joined(this.code);
		List<String> asked = new CopyOnWriteArrayList<>();
		card.route(CARDS, (route) -> {
			asked.add(route.request().url());
			route.abort();
		});
		touch(card, "5", "6", "5", "7");
		card.click("#send");
		expectTruth(card, "kept");
		JudgeCard.reload(card);
		expectTruth(card, "kept");
		assertThat(ownMarks()).isEmpty();
		card.unroute(CARDS);
		card.onRequest((request) -> asked.add(request.url()));
		expectTruth(card, "received");
		assertThat(asked.stream().filter((url) -> url.contains("/api/cards/")).distinct()).hasSize(1);
		assertThat(ownMarks()).containsExactly("56/57 1");
	}

	@Test
	void aCardWhoseAnswerWasLostIsRepeatedAndCountsOnce() {
		Page card = this.tablets.joined(this.code);
		List<String> sent = losingTheFirstAnswer(card);
		touch(card, "5", "6", "5", "7");
		card.route(TABLE, Route::abort);
		send(card);
		assertThat(sent).hasSize(2);
		assertThat(sent.stream().distinct()).hasSize(1);
		assertThat(ownMarks()).containsExactly("56/57 1");
	}

	@Test
	void aCardWhoseAnswerWasLostIsReceivedAsSoonAsTheTableHasIt() {
		Page card = this.tablets.joined(this.code);
		List<String> sent = losingTheFirstAnswer(card);
		touch(card, "5", "6", "5", "7");
		card.route(CARDS, (route) -> {
			if (sent.isEmpty()) {
				route.fallback();
			}
			else {
				route.abort();
			}
		});
		send(card);
		assertThat(sent).hasSize(1);
		card.waitForResponse(CARDS, () -> card.unroute(CARDS));
		expectTruth(card, "received");
		assertThat(ownMarks()).containsExactly("56/57 1");
	}

	/** Let the service have each card, but lose its first answer. */
	private static List<String> losingTheFirstAnswer(Page card) {
		List<String> sent = new CopyOnWriteArrayList<>();
		card.route(CARDS, (route) -> {
			sent.add(route.request().url());
			loseFirst(route, sent.size());
		});
		return sent;
	}

	/** As after a server that was restored from a copy made before the card came. */
	@Test
	void aReceivedCardThatTheServiceLacksIsOfferedAgainUnderItsIdentity() {
		Page card = this.tablets.joined(this.code);
		List<String> sent = new CopyOnWriteArrayList<>();
		card.route(CARDS, (route) -> {
			sent.add(route.request().url());
			if (sent.size() == 1) {
				route.fulfill(new Route.FulfillOptions().setContentType("application/json")
					.setBody("{\"receivedAt\":\"2027-02-13T10:00:00Z\"}"));
			}
			else {
				route.resume();
			}
		});
		touch(card, "5", "6", "5", "7");
		card.click("#send");
		card.waitForCondition(() -> ownMarks().equals(List.of("56/57 1")));
		expectTruth(card, "received");
		assertThat(sent).hasSize(2);
		assertThat(sent.stream().distinct()).hasSize(1);
	}

	@Test
	void aCardThatTheServiceSetAsideIsNotOfferedForEver() {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "5", "7");
		send(card);
		JudgeCard.tell(card, (table) -> table.replaceFirst("\"cards\":\\[\\{[^\\]]*\\]", "\"cards\":[]"));
		expectTruth(card, "being-typed");
		assertThat(card.locator("#send")).isEnabled();
		card.unroute(TABLE);
		expectTruth(card, "received");
		assertThat(ownMarks()).containsExactly("56/57 1");
	}

	@Test
	void anAnswerThatTakesNineSecondsEndsAsReceived() {
		Page card = this.tablets.screen(768, 1024);
		card.clock().install();
		this.tablets.join(card, this.code);
		List<Route> held = new CopyOnWriteArrayList<>();
		List<String> failed = new CopyOnWriteArrayList<>();
		card.onRequestFailed((request) -> failed.add(request.url()));
		touch(card, "5", "6", "5", "7");
		card.route(CARDS, held::add);
		card.click("#send");
		expectTruth(card, "kept");
		card.waitForCondition(() -> held.size() == 1);
		card.clock().fastForward(9_000);
		card.waitForCondition(() -> held.size() == 2);
		held.get(0).fulfill(new Route.FulfillOptions().setResponse(held.get(0).fetch()));
		expectTruth(card, "received");
		assertThat(failed).noneMatch((url) -> url.contains("/api/cards/"));
		assertThat(ownMarks()).containsExactly("56/57 1");
	}

	@Test
	void inContactIsNoOlderThanFiveSeconds() {
		Page card = this.tablets.screen(768, 1024);
		card.clock().install();
		this.tablets.join(card, this.code);
		assertThat(card.locator("#contact")).hasText("In contact");
		List<Route> held = new CopyOnWriteArrayList<>();
		card.route(TABLE, held::add);
		card.clock().fastForward(2_000);
		card.waitForCondition(() -> !held.isEmpty());
		card.clock().fastForward(5_000);
		assertThat(card.locator("#contact")).hasText("No contact, trying again");
		card.unroute(TABLE);
		held.forEach(Route::resume);
		assertThat(card.locator("#contact")).hasText("In contact");
	}

	@Test
	void aTeamThatWasEndedIsNotCalledClosed() {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "5", "7");
		send(card);
		this.run.end(this.skating.id(), this.day.now(this.skating).version(), PerformanceStatus.NOT_FINISHED, "injury",
				SmallCompetition.REFEREE);
		expectTruth(card, "ended");
		assertThat(card.locator("#truth")).hasText("No. 2 was ended by the referee: no marks count for it");
		JudgeCard.reload(card);
		expectTruth(card, "ended");
	}

	@Test
	void eraseTakesBackTheDigitThatWasTypedLast() {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "erase");
		assertThat(card.locator("#first .typed")).hasText("5.");
		touch(card, "7", "5", "8");
		card.click("#first");
		touch(card, "4", "2", "erase");
		assertThat(card.locator("#first .typed")).hasText("4.");
		assertThat(card.locator("#second .typed")).hasText("5.8");
	}

	@Test
	void aChangeIsTheNextCardOfTheSameTeam() {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "5", "7");
		send(card);
		card.click("#second");
		touch(card, "5", "8");
		expectTruth(card, "being-changed");
		send(card);
		assertThat(ownMarks()).containsExactly("56/58 2");
	}

	@Test
	void whatIsHalfTypedIsThereAfterAReload() {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "5");
		JudgeCard.reload(card);
		expectMarking(card);
		assertThat(card.locator("#first .typed")).hasText("5.6");
		assertThat(card.locator("#second .typed")).hasText("5.");
		touch(card, "7");
		send(card);
	}

	@Test
	void theNewerTabletHasTheSeatAndTheOlderIsTold() {
		Page older = this.tablets.joined(this.code);
		older.route(CARDS, Route::abort);
		touch(older, "5", "6", "5", "7");
		older.click("#send");
		expectTruth(older, "kept");
		Page newer = this.tablets.takingOver(this.code);
		expectMarking(newer);
		assertThat(older.locator("h1")).hasText("This tablet no longer has the seat");
		assertThat(older.locator("#refusals")).containsText("is kept here and has not been received");
		Looks.expectAccessible(older);
		older.unroute(CARDS);
		this.tablets.takeOver(older, this.code);
		expectTruth(older, "received");
		assertThat(newer.locator("h1")).hasText("This tablet no longer has the seat");
	}

	@ParameterizedTest
	@CsvSource({ CARDS + ", " + TABLE, TABLE + ", " + CARDS })
	void aCardThatCameTooLateIsToldOnceWhateverIsHeardFirst(String first, String second) {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "5", "7");
		send(card);
		card.route(CARDS, Route::abort);
		card.click("#second");
		touch(card, "5", "8");
		card.click("#send");
		expectTruth(card, "kept");
		card.route(TABLE, Route::abort);
		closeWithTheOthersCards();
		card.unroute(first);
		assertThat(first.equals(CARDS) ? card.locator("#refusals li") : card.locator("[data-state=waiting]"))
			.isVisible();
		card.unroute(second);
		assertThat(card.locator("[data-state=waiting]")).isVisible();
		assertThat(card.locator("#refusals li")).containsText(new String[] { "was not taken" });
		card.click("#refusals button");
		assertThat(card.locator("#refusals")).isHidden();
		assertThat(ownMarks()).containsExactly("56/57 1");
	}

	private void closeWithTheOthersCards() {
		this.day.send(this.skating, this.day.seats().get(1), 1, new CardMarks(500, 500));
		this.day.send(this.skating, this.day.seats().get(2), 1, new CardMarks(500, 500));
		this.day.close(this.skating);
	}

	@Test
	void aRemarkStandsAboveTheKeysUntilItIsSeenAndIsHeardOfLater() {
		Page card = this.tablets.joined(this.code);
		expectMarking(card);
		note("one skater");
		Locator remark = card.locator("#remarks li");
		assertThat(remark).hasAttribute("data-state", "open");
		Looks.expectAccessible(card);
		card.context().setOffline(true);
		card.click("#remarks button");
		assertThat(remark).hasAttribute("data-state", "seen");
		assertThat(card.locator("#remarks button")).isHidden();
		assertThat(notYet()).contains("Judge 1");
		card.context().setOffline(false);
		await().untilAsserted(() -> assertThat(notYet()).doesNotContain("Judge 1"));
		JudgeCard.reload(card);
		assertThat(remark).hasAttribute("data-state", "seen");
	}

	@Test
	void twoVersionsOfACardAreShownAndTheJudgeSendsThisTabletsAsAChange() {
		Page card = keptBesideAnother();
		assertThat(card.locator("#differ-rows tr").first()).hasText("Required elements5.65.0");
		assertThat(card.locator("#differ-received")).containsText("Received at ");
		Looks.expectAccessible(card);
		card.click("[data-choice=mine]");
		expectTruth(card, "received");
		assertThat(ownMarks()).containsExactly("56/57 2");
		assertThat(card.locator("#refusals")).isHidden();
	}

	@Test
	void theJudgeKeepsTheVersionThatWasReceived() {
		Page card = keptBesideAnother();
		card.click("[data-choice=received]");
		expectTruth(card, "received");
		assertThat(card.locator("#first .typed")).hasText("5.0");
		assertThat(ownMarks()).containsExactly("50/51 1");
		JudgeCard.reload(card);
		expectTruth(card, "received");
		assertThat(card.locator("#differ")).isHidden();
	}

	@Test
	void twoVersionsThatSayTheSameAreOne() {
		Page card = this.tablets.joined(this.code);
		card.route(CARDS, Route::abort);
		touch(card, "5", "0", "5", "1");
		card.click("#send");
		expectTruth(card, "kept");
		this.day.send(this.skating, this.day.seats().get(0), 1, new CardMarks(500, 510));
		card.unroute(CARDS);
		expectTruth(card, "received");
		assertThat(card.locator("#differ")).isHidden();
		assertThat(ownMarks()).containsExactly("50/51 1");
	}

	/**
	 * A tablet whose card met another one that came first, say from a tablet before it.
	 */
	private Page keptBesideAnother() {
		Page card = this.tablets.joined(this.code);
		card.route(CARDS, Route::abort);
		touch(card, "5", "6", "5", "7");
		card.click("#send");
		expectTruth(card, "kept");
		this.day.send(this.skating, this.day.seats().get(0), 1, new CardMarks(500, 510));
		card.unroute(CARDS);
		assertThat(card.locator("#differ")).isVisible();
		return card;
	}

	private void note(String text) {
		this.context.getBean(Remarks.class)
			.note(this.skating.id(), Remarks.RemarkKind.FALL, text, SmallCompetition.REFEREE);
	}

	private List<String> notYet() {
		return this.stand.ofSegment(this.day.segment(1)).now().remarks().get(0).notYet();
	}

	@Test
	void aCardThatWasOpenedAgainIsChangedBesideTheTeamOnTheIce() {
		Page card = this.tablets.joined(this.code);
		touch(card, "5", "6", "5", "7");
		send(card);
		closeWithTheOthersCards();
		PerformanceView next = this.day.callNext(1);
		assertThat(card.locator("#number")).hasText("3");
		touch(card, "4");
		this.reopening.reopen(this.skating.id(), this.day.now(this.skating).version(), "a mark mistyped",
				SmallCompetition.REFEREE);
		assertThat(card.locator("#reopened-text")).hasText("No. 2 was opened again");
		assertThat(card.locator("#number")).hasText("3");
		Looks.expectAccessible(card);
		card.click("#turn");
		assertThat(card.locator("#number")).hasText("2");
		assertThat(card.locator("#first .typed")).hasText("5.6");
		card.click("#second");
		touch(card, "5", "8");
		JudgeCard.reload(card);
		assertThat(card.locator("#second .typed")).hasText("5.8");
		send(card);
		assertThat(ownMarks()).containsExactly("56/58 2");
		card.click("#turn");
		assertThat(card.locator("#number")).hasText("3");
		assertThat(card.locator("#first .typed")).hasText("4.");
		card.click("#turn");
		this.day.close(this.skating);
		assertThat(card.locator("#number")).hasText(String.valueOf(next.startNumber()));
		assertThat(card.locator("#reopened")).isHidden();
	}

	/**
	 * Another service had this address then. Its seat has the same identity where the
	 * competition was restored from that day, and another where it was not.
	 */
	@Test
	void whatATabletKeepsOfAnotherDayNeverComesIntoThisOne() {
		Page card = this.tablets.joined(this.code);
		expectMarking(card);
		card.navigate("/");
		String skating = this.skating.id().toString();
		String seat = "rimebook/" + this.day.seats().get(0).id() + "/";
		card.evaluate(KEEP,
				Map.of(seat + "cards",
						"[" + ofAnotherDay(skating, "waiting") + "," + ofAnotherDay(GONE, "waiting") + ","
								+ ofAnotherDay(GONE, "received") + "]",
						seat + "typed/" + GONE, "{\"first\":\"4.1\",\"second\":\"\",\"at\":\"second\"}",
						seat + "turned", "\"" + GONE + "\"", "rimebook/" + UUID.randomUUID() + "/cards",
						"[" + ofAnotherDay(skating, "waiting") + "]"));
		List<String> sent = new CopyOnWriteArrayList<>();
		card.onRequestFinished((request) -> {
			if (request.method().equals("PUT")) {
				sent.add(String.valueOf(request.response().status()));
			}
		});
		card.navigate("/judge/card");
		assertThat(card.locator("#refusals li"))
			.containsText(new String[] { "another service, or on another day", "another service, or on another day" });
		assertThat(card.locator("[data-state=marking]")).isVisible();
		assertThat(card.locator("#first .typed")).isEmpty();
		Looks.expectAccessible(card);
		touch(card, "5", "6", "5", "7");
		send(card);
		assertThat(ownMarks()).containsExactly("56/57 1");
		assertThat(sent).as("nothing of another seat, and nothing that was acknowledged then")
			.containsExactly("409", "409", "200");
		card.click("#refusals li:nth-child(1) button");
		card.click("#refusals button");
		JudgeCard.reload(card);
		expectTruth(card, "received");
		assertThat(card.locator("#refusals")).isHidden();
	}

	/** A card that a tablet put down for a service that is not this one. */
	private static String ofAnotherDay(String performance, String state) {
		return """
				{"kind":"pair","id":"%s","performance":"%s","sequence":1,"startNumber":7,"team":"Team of then",
				"first":31,"second":32,"state":"%s","receivedAt":"2027-02-06T14:00:00Z",
				"life":"01a20000-0000-7000-8000-0000000000bb"}""".formatted(UUID.randomUUID(), performance, state);
	}

	@Test
	void aStorageThatIsFullIsSaid() {
		Page card = this.tablets.joined(this.code);
		expectMarking(card);
		card.evaluate(
				"() => { IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; }");
		touch(card, "5", "6");
		assertThat(card.locator("#not-lasting")).isVisible();
		assertThat(card.locator("#first .typed")).hasText("5.6");
		touch(card, "5", "7");
		send(card);
	}

	@Test
	void aTabletShowsAllOfTheCardWithKeysOfFourteenMillimetres() {
		Page card = this.tablets.joined(this.code);
		note("one skater fell at the second intersection");
		note("5 s too long");
		JudgeCard.tell(card, JudgeCard::withALongName);
		assertThat(card.locator("h1")).hasText(JudgeCard.LONG_NAME);
		assertThat(card.locator("#remarks li[data-state=open]")).hasCount(2);
		touch(card, "5", "6", "5", "7");
		JudgeCard.onEveryTablet(card, () -> JudgeCard.expectAllInSight(card, "#keys button"));
		JudgeCard.tell(card, JudgeCard::withOneOpenedAgain);
		assertThat(card.locator("#reopened")).isVisible();
		JudgeCard.onEveryTablet(card, () -> {
			JudgeCard.expectAllInSight(card, "#keys button");
			Looks.expectAccessible(card);
		});
	}

	@Test
	void threeNoticesStandAboveTheKeysAtOnceOnEveryTablet() {
		Page card = this.tablets.joined(this.code);
		note("one skater fell at the second intersection");
		note("5 s too long");
		note("a ribbon lies on the ice");
		JudgeCard.tell(card, JudgeCard::withALongName);
		assertThat(card.locator("h1")).hasText(JudgeCard.LONG_NAME);
		assertThat(card.locator("#remarks li[data-state=open]")).hasCount(3);
		for (int[] size : new int[][] { { 768, 1024 }, { 1024, 768 }, { 1280, 800 }, { 820, 900 } }) {
			card.setViewportSize(size[0], size[1]);
			JudgeCard.expectAllInSight(card, "#keys button");
		}
		Looks.expectAccessible(card);
	}

	@Test
	void aPhoneNeedsNoScrollingSideways() {
		Page card = this.tablets.joined(this.code);
		for (int width : List.of(320, 390)) {
			card.setViewportSize(width, 844);
			expectMarking(card);
			assertThat(page(card, "scrollWidth")).isLessThanOrEqualTo(width);
		}
		Looks.expectAccessible(card);
	}

	@Test
	void theJoinPageIsAccessibleAlsoWithAWrongCode() {
		Page page = this.tablets.screen(390, 844);
		page.navigate("/judge");
		Looks.expectAccessible(page);
		page.fill("#code", "WRONG");
		page.click("button[type=submit]");
		assertThat(page.locator("#code")).hasValue("WRONG");
		assertThat(page.locator("#code-fault")).isVisible();
		Looks.expectAccessible(page);
	}

	private static int page(Page page, String size) {
		return (Integer) page.evaluate("document.documentElement." + size);
	}

	/**
	 * What the service holds of this seat for the team on the ice: marks in tenths and
	 * sequence.
	 */
	private List<String> ownMarks() {
		return this.tables.tableOf(this.day.seats().get(0).id())
			.course()
			.cards()
			.stream()
			.filter((card) -> card.performance().equals(this.skating.id()))
			.map(JudgeCardBrowserTests::inTenths)
			.toList();
	}

	private static String inTenths(JudgeTable.OwnCard card) {
		return card.version().first() / 10 + "/" + card.version().second() / 10 + " " + card.version().sequence();
	}

}
