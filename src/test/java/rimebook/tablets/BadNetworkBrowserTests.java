package rimebook.tablets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;

import rimebook.accounts.Role;
import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.published.Standing;
import rimebook.results.Standings;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.PlacedEntry;
import rimebook.tabulation.PlacementTabulation;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Crew;
import rimebook.testsupport.JudgeCard;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.JudgeCard.expectTruth;

/**
 * A segment of twelve teams and seven judges with tablets, as many by touch as by mouse,
 * on the day on which everything goes wrong: three tablets lose the network for a while,
 * two reload, one browser is closed and opened anew, and the service is killed with
 * SIGKILL while the clock runs and the cards come in. How often each tablet tries in vain
 * before the network is back is the system property {@code rimebook.network-tries}, 3
 * unless told otherwise.
 */
@BrowserTest
class BadNetworkBrowserTests {

	private static final int TEAMS = 12;

	private static final int JUDGES = 7;

	private static final int CUT_AT = 4;

	private static final int RELOADS_AT = 6;

	private static final int NEW_BROWSER_AT = 8;

	private static final int KILLED_AT = 10;

	private static final int TRIES = Integer.getInteger("rimebook.network-tries", 3);

	private static final int[][] SIZES = { { 768, 1024 }, { 1024, 768 }, { 1280, 800 } };

	private final Random random = new Random(20271107);

	/** What each judge typed, by start number. */
	private final Map<Integer, List<CardMarks>> typed = new HashMap<>();

	private final List<String> codes = new ArrayList<>();

	private final List<Page> cards = new ArrayList<>();

	@TempDir
	private Path profile;

	private ServiceProcess service;

	private SegmentId segment;

	private String referee;

	private final Browsers tablets;

	private Page stand;

	BadNetworkBrowserTests(Browsers tablets) {
		this.tablets = tablets;
	}

	@BeforeEach
	void openASegment() throws Exception {
		this.service = new ServiceProcess(ServiceProcess.onH2(), Path.of("target", "bad-network.log"),
				"-XX:TieredStopAtLevel=1");
		try (ConfigurableApplicationContext context = this.service.within()) {
			SmallCompetition day = SmallCompetition.running(context, TEAMS, JUDGES);
			this.segment = day.open(1);
			context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
			day.seats().stream().map(SeatView::code).forEach(this.codes::add);
			this.referee = Crew.add(context, Role.REFEREE);
		}
		this.service.start();
		this.tablets.goTo(this.service.port());
	}

	@AfterEach
	void clearUp() throws Exception {
		this.service.close();
	}

	@Test
	void everyCardArrivesOnceAsTyped() throws Exception {
		this.stand = this.tablets.signedIn(this.referee);
		this.stand.navigate("/desk/stand/" + this.segment);
		for (int seat = 0; seat < JUDGES - 1; seat++) {
			int[] size = SIZES[seat % SIZES.length];
			this.cards.add(isTouched(seat) ? this.tablets.touchScreen(size[0], size[1])
					: this.tablets.screen(size[0], size[1]));
		}
		this.cards.add(this.tablets.ofProfile(this.profile).newPage());
		for (int seat = 0; seat < JUDGES; seat++) {
			Browsers.joinByHand(this.cards.get(seat), this.codes.get(seat));
		}
		for (int number = 1; number <= TEAMS; number++) {
			skate(number);
		}
		this.service.kill();
		try (ConfigurableApplicationContext context = this.service.within()) {
			expectEveryCardOnce(context);
			expectThePlacesOfThePureFunction(context);
		}
	}

	private void skate(int number) throws Exception {
		this.stand.click("#call");
		this.typed.put(number, marks());
		for (Page card : this.cards) {
			assertThat(card.locator("#number")).hasText(String.valueOf(number));
		}
		switch (number) {
			case CUT_AT -> withThreeCutOff(number);
			case RELOADS_AT -> withTwoReloading(number);
			case NEW_BROWSER_AT -> withANewBrowser(number);
			case KILLED_AT -> withTheServiceKilled(number);
			default -> this.cards.forEach((card) -> mark(card, number));
		}
		for (Page card : this.cards) {
			expectTruth(card, "received");
		}
		this.stand.click("#close-ask");
		this.stand.click("#close");
		for (Page card : this.cards) {
			expectTruth(card, "closed");
		}
	}

	/** Typed and sent without a network: kept, and received by itself once it is back. */
	private void withThreeCutOff(int number) {
		List<Page> cut = this.cards.subList(0, 3);
		Map<Page, Integer> tries = new HashMap<>();
		cut.forEach((card) -> {
			card.context().setOffline(true);
			card.onRequestFailed((request) -> {
				if (request.url().contains("/api/cards/")) {
					tries.merge(card, 1, Integer::sum);
				}
			});
		});
		this.cards.forEach((card) -> mark(card, number));
		cut.forEach((card) -> expectTruth(card, "kept"));
		assertThat(this.stand.locator("#close-missing")).containsText("Judge 1, Judge 2, Judge 3");
		for (Page card : cut) {
			card.waitForCondition(() -> tries.getOrDefault(card, 0) >= TRIES,
					new Page.WaitForConditionOptions().setTimeout(0));
			expectTruth(card, "kept");
		}
		cut.forEach((card) -> card.context().setOffline(false));
	}

	/** One in the middle of typing, one after sending. */
	private void withTwoReloading(int number) {
		Page typing = this.cards.get(3);
		CardMarks marks = this.typed.get(number).get(3);
		touch(typing, marks.first());
		JudgeCard.reload(typing);
		assertThat(typing.locator("#first .typed")).hasText(words(marks.first()));
		touch(typing, marks.second());
		press(typing.locator("#send"));
		Page sent = this.cards.get(4);
		mark(sent, number);
		JudgeCard.reload(sent);
		for (int seat = 0; seat < JUDGES; seat++) {
			if (seat != 3 && seat != 4) {
				mark(this.cards.get(seat), number);
			}
		}
	}

	/** The browser is closed with a card that nobody received, and opened anew. */
	private void withANewBrowser(int number) {
		this.cards.get(JUDGES - 1).context().setOffline(true);
		this.cards.forEach((card) -> mark(card, number));
		Page closed = this.cards.remove(JUDGES - 1);
		expectTruth(closed, "kept");
		closed.context().close();
		Page card = this.tablets.ofProfile(this.profile).newPage();
		card.navigate("/judge/card");
		this.cards.add(card);
	}

	/**
	 * The power goes while the clock runs and the third card is on its way; four judges
	 * do not know it.
	 */
	private void withTheServiceKilled(int number) throws Exception {
		this.stand.click("#clock-start");
		Locator dial = this.stand.locator("#clock .dial");
		assertThat(this.stand.locator("#clock-stop")).isVisible();
		String started = dial.getAttribute("data-since");
		CompletableFuture<Void> cut = new CompletableFuture<>();
		AtomicBoolean isOnItsWay = new AtomicBoolean();
		this.cards.get(2).onRequest((request) -> {
			if (request.url().contains("/api/cards/") && isOnItsWay.compareAndSet(false, true)) {
				CompletableFuture.runAsync(() -> kill(cut));
			}
		});
		this.cards.subList(0, 3).forEach((card) -> mark(card, number));
		this.cards.subList(3, JUDGES).forEach((card) -> mark(card, number));
		cut.get();
		expectTruth(this.cards.get(JUDGES - 1), "kept");
		this.service.start();
		this.stand.reload();
		assertThat(dial).hasAttribute("data-since", started);
		assertThat(dial.locator(".time")).not().hasText("0:00");
		this.stand.click("#clock-stop");
		assertThat(this.stand.locator("#clock-take-back")).hasText("Take back the stop");
	}

	private void kill(CompletableFuture<Void> cut) {
		try {
			this.service.kill();
			cut.complete(null);
		}
		catch (InterruptedException ex) {
			cut.completeExceptionally(ex);
		}
	}

	private void mark(Page card, int number) {
		CardMarks marks = this.typed.get(number).get(this.cards.indexOf(card));
		touch(card, marks.first());
		touch(card, marks.second());
		press(card.locator("#send"));
	}

	private void touch(Page card, int mark) {
		for (char digit : words(mark).replace(".", "").toCharArray()) {
			press(card.locator("[data-key='" + digit + "']"));
		}
	}

	private void press(Locator key) {
		if (isTouched(this.cards.indexOf(key.page()))) {
			key.tap();
		}
		else {
			key.click();
		}
	}

	private static boolean isTouched(int seat) {
		return seat % 2 == 0;
	}

	/** Near enough to each other that no tablet asks whether they are meant. */
	private List<CardMarks> marks() {
		List<CardMarks> panel = new ArrayList<>();
		for (int i = 0; i < JUDGES; i++) {
			int first = 38 + this.random.nextInt(12);
			panel.add(new CardMarks(10 * first, 10 * (first - 4 + this.random.nextInt(9))));
		}
		return panel;
	}

	private static String words(int mark) {
		return mark / 100 + "." + mark % 100 / 10;
	}

	private void expectEveryCardOnce(ConfigurableApplicationContext context) {
		Map<String, Integer> numbers = new HashMap<>();
		performances(context).forEach((one) -> numbers.put(one.id().toString(), one.startNumber()));
		List<String> seats = context.getBean(Panels.class)
			.judges(event(context).id())
			.stream()
			.map((seat) -> seat.id().toString())
			.toList();
		List<String> rows = context.getBean(JdbcTemplate.class)
			.query("select performance_id, seat_id, first_mark, second_mark from card_submission",
					(row, i) -> numbers.get(row.getString(1)) + " " + seats.indexOf(row.getString(2)) + " "
							+ row.getInt(3) + "/" + row.getInt(4));
		List<String> expected = new ArrayList<>();
		this.typed.forEach((number, panel) -> {
			for (int seat = 0; seat < JUDGES; seat++) {
				expected.add(number + " " + seat + " " + panel.get(seat).first() + "/" + panel.get(seat).second());
			}
		});
		assertThat(rows).hasSize(TEAMS * JUDGES).containsExactlyInAnyOrderElementsOf(expected);
	}

	private void expectThePlacesOfThePureFunction(ConfigurableApplicationContext context) {
		List<EntryCards> entries = performances(context).stream()
			.map((one) -> new EntryCards(one.entry().toString(), EntryStatus.SKATED, this.typed.get(one.startNumber())))
			.toList();
		EventView event = event(context);
		Map<String, Integer> places = new HashMap<>();
		PlacementTabulation.ofCards(event.rules(event.segment(this.segment).kind()), entries)
			.rows()
			.forEach((PlacedEntry row) -> places.put(row.entry(), row.place()));
		Map<String, Integer> published = new HashMap<>();
		context.getBean(Standings.class)
			.latest(this.segment)
			.orElseThrow()
			.standing()
			.rows()
			.forEach((Standing.Row row) -> published.put(row.entry(), row.place()));
		assertThat(published).hasSize(TEAMS).isEqualTo(places);
	}

	private List<PerformanceView> performances(ConfigurableApplicationContext context) {
		return context.getBean(SegmentRun.class).performances(this.segment);
	}

	private EventView event(ConfigurableApplicationContext context) {
		return context.getBean(Competitions.class).eventOf(this.segment);
	}

}
