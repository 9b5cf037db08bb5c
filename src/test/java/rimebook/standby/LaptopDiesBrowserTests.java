package rimebook.standby;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.SegmentId;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.results.Standings;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryCards;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.PlacementTabulation;
import rimebook.tabulation.SegmentKind;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Crew;
import rimebook.testsupport.JudgeCard;
import rimebook.testsupport.ServiceProcess;
import rimebook.testsupport.SmallCompetition;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/**
 * Seven tablets in browsers; the service is killed in the middle of a segment and its
 * disk replaced by a copy from before. The tablets only wait.
 */
@BrowserTest
class LaptopDiesBrowserTests {

	private static final int JUDGES = 7;

	private static final int TEAMS = 4;

	private final Browsers screens;

	private final Map<String, Map<Integer, CardMarks>> given = new LinkedHashMap<>();

	private final List<Page> tablets = new ArrayList<>();

	private ServiceProcess service;

	private Path data;

	private CopyFolder stick;

	private String segment;

	private List<String> performances;

	private List<String> codes;

	private String referee;

	LaptopDiesBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@AfterEach
	void stop() {
		this.service.close();
	}

	@Test
	void everyAcknowledgedCardIsBackOnceAndThePlacesAreThoseOfTheMarks(@TempDir Path folder) throws Exception {
		prepare(folder);
		Page stand = this.screens.signedIn(this.referee);
		stand.navigate("/desk/stand/" + this.segment);
		this.codes.forEach((code) -> this.tablets.add(this.screens.joined(code)));
		send(0, 0, JUDGES);
		close(stand);
		call(stand);
		send(1, 0, 3);
		copyAnew();
		// All of this is lost with the laptop.
		send(1, 3, JUDGES);
		close(stand);
		call(stand);
		send(2, 0, JUDGES);
		close(stand);
		call(stand);
		send(3, 0, 3);
		awaitSince("card.received", 4 + JUDGES + 3);
		this.tablets.forEach((tablet) -> expectTeam(tablet, 3));
		this.service.kill();
		CardMarks inVain = typed(3, 3);
		this.tablets.get(3).click("#send");
		JudgeCard.expectTruth(this.tablets.get(3), "kept");

		long began = System.nanoTime();
		replaceDisk();
		this.service.start();
		assertThat(stand.locator("#alarms")).containsText("14 cards came back");
		System.out.printf("Back after %d s, with every card%n",
				Duration.ofNanos(System.nanoTime() - began).toSeconds());
		assertThat(stand.locator("#alarms")).containsText(Pattern.compile("none is missing; \\d+ other acts are"));

		close(stand);
		call(stand);
		close(stand);
		call(stand);
		JudgeCard.expectTruth(this.tablets.get(3), "received");
		give(3, 3, inVain);
		send(3, 4, JUDGES);
		close(stand);
		assertThat(stand.locator("#alarms")).containsText("nothing else is to be done again");
		this.service.kill();
		expectEveryCardOnceAndThePlaces();
	}

	/**
	 * This machine counts as safe, as one with TLS does; the other tablet's browser keeps
	 * no page, as none does without TLS.
	 */
	@Test
	void aTabletThatIsReloadedWithoutNetworkShowsItsCardOrSaysWhatNotToDo(@TempDir Path folder) throws Exception {
		prepare(folder);
		Page without = this.screens.joined(this.codes.get(1));
		JudgeCard.expectMarking(without);
		assertThat(without.locator("#stay")).isHidden();
		Page tablet = this.screens.opened(new Browser.NewContextOptions().setServiceWorkers(ServiceWorkerPolicy.ALLOW)
			.setViewportSize(768, 1024));
		this.screens.join(tablet, this.codes.get(0));
		JudgeCard.expectMarking(tablet);
		tablet.waitForFunction("async () => (await (await caches.open('rimebook-card')).keys()).length > 10");
		type(tablet, new CardMarks(510, 490));
		assertThat(tablet.locator(".card")).hasAttribute("data-kept", "true");
		this.service.kill();
		tablet.reload();
		JudgeCard.expectMarking(tablet);
		assertThat(tablet.locator("#first .typed")).hasText("5.1");
		tablet.click("#send");
		JudgeCard.expectTruth(tablet, "kept");
		assertThat(tablet.locator("#stay")).isHidden();
		assertThat(without.locator("#stay")).containsText("Do not reload");
		assertThat(without.locator("#stay")).isVisible();
		tablet.reload();
		JudgeCard.expectTruth(tablet, "kept");
		this.service.start();
		JudgeCard.expectTruth(tablet, "received");
		assertThat(without.locator("#stay")).isHidden();
	}

	private void prepare(Path folder) throws Exception {
		this.data = folder.resolve("data");
		this.stick = new CopyFolder(Files.createDirectory(folder.resolve("stick")));
		this.service = new ServiceProcess(
				List.of("spring.datasource.url=jdbc:h2:file:" + this.data.resolve("rimebook")
						+ ";WRITE_DELAY=0;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE",
						"rimebook.copy.folder=" + this.stick.path(), "rimebook.copy.every=1h",
						"rimebook.copy.look=300ms"),
				Path.of("target", "laptop-dies.log"), "-XX:TieredStopAtLevel=1");
		this.screens.goTo(this.service.port());
		try (ConfigurableApplicationContext context = this.service.within()) {
			SmallCompetition day = SmallCompetition.running(context, TEAMS, JUDGES);
			this.segment = day.open(1).toString();
			day.callNext(1);
			this.performances = day.performances(1).stream().map((one) -> one.id().toString()).toList();
			context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
			this.codes = day.seats().stream().map(SeatView::code).toList();
			this.referee = Crew.add(context, Role.REFEREE);
		}
		this.service.start();
	}

	/** A service that starts makes a whole copy at once, and then none for an hour. */
	private void copyAnew() throws IOException, InterruptedException {
		String last = this.stick.notes().get(0).name();
		this.service.kill();
		this.service.start();
		Awaitility.await("a copy").until(() -> !this.stick.notes().get(0).name().equals(last));
	}

	private void awaitSince(String word, int lines) {
		Awaitility.await("lines at the second place").until(() -> {
			Path since = this.stick.since(this.stick.notes().get(0).name());
			return Files.exists(since) && Files.readString(since)
				.lines()
				.filter((line) -> line.contains("\"" + word + "\""))
				.count() == lines;
		});
	}

	private void replaceDisk() throws IOException {
		Path database = this.data.resolve("rimebook.mv.db");
		Files.delete(database);
		StartedFromCopy started = new StartFromCopy(this.stick,
				new DatabaseFile(database.toAbsolutePath(), new CopyCheck("rimebook", "")), false, Clock.systemUTC())
			.run();
		started.sentences().forEach(System.out::println);
	}

	private void send(int team, int from, int to) {
		for (int judge = from; judge < to; judge++) {
			CardMarks marks = typed(team, judge);
			JudgeCard.send(this.tablets.get(judge));
			give(team, judge, marks);
		}
	}

	private CardMarks typed(int team, int judge) {
		CardMarks marks = new CardMarks(10 * (40 + (7 * team + 3 * judge) % 15),
				10 * (40 + (5 * team + 4 * judge) % 15));
		Page tablet = this.tablets.get(judge);
		expectTeam(tablet, team);
		type(tablet, marks);
		return marks;
	}

	/** A tablet looks every second and a half; before that it may know of no call. */
	private static void expectTeam(Page tablet, int team) {
		assertThat(tablet.locator("#number")).hasText(String.valueOf(team + 1));
	}

	private void give(int team, int judge, CardMarks marks) {
		this.given.computeIfAbsent(this.performances.get(team), (id) -> new LinkedHashMap<>()).put(judge, marks);
	}

	private static void type(Page tablet, CardMarks marks) {
		JudgeCard.expectMarking(tablet);
		tablet.click("#first");
		tablet.keyboard().type(words(marks.first()));
		tablet.click("#second");
		tablet.keyboard().type(words(marks.second()));
	}

	private static String words(int mark) {
		return mark / 100 + "." + mark / 10 % 10;
	}

	private static void close(Page stand) {
		stand.click("#close-ask");
		press(stand, "#close");
		assertThat(stand.locator(".notice")).isVisible();
	}

	private static void call(Page stand) {
		press(stand, "#call");
		assertThat(stand.locator(".ice .start-number")).isVisible();
	}

	/** What the page shows before the answer comes is not yet to be pressed. */
	private static void press(Page stand, String button) {
		stand.evaluate("document.body.dataset.before = ''");
		stand.click(button);
		assertThat(stand.locator("body[data-before]")).hasCount(0);
	}

	private void expectEveryCardOnceAndThePlaces() {
		try (ConfigurableApplicationContext context = this.service.within()) {
			Map<String, List<CardMarks>> kept = new LinkedHashMap<>();
			context.getBean(JdbcClient.class).sql("""
					select c.performance_id, c.first_mark, c.second_mark from card_submission c
					join seat s on s.id = c.seat_id order by c.performance_id, s.number""").query((row) -> {
				kept.computeIfAbsent(row.getString(1), (id) -> new ArrayList<>())
					.add(new CardMarks(row.getInt(2), row.getInt(3)));
			});
			Map<String, List<CardMarks>> expected = new HashMap<>();
			this.given.forEach((id, cards) -> expected.put(id, List.copyOf(cards.values())));
			assertThat(kept).isEqualTo(expected);
			expectPlaces(context, expected);
			assertThat(context.getBean(RecordVerification.class).verify().isWhole()).isTrue();
			assertThat(context.getBean(RecordVerification.class).compareStored().agrees()).isTrue();
		}
	}

	private void expectPlaces(ConfigurableApplicationContext context, Map<String, List<CardMarks>> cards) {
		SegmentId id = SegmentId.of(this.segment);
		List<PerformanceView> skated = context.getBean(SegmentRun.class).performances(id);
		List<EntryCards> field = skated.stream()
			.map((one) -> EntryCards.skated(one.entry().toString(), cards.get(one.id().toString())))
			.toList();
		Map<String, Integer> places = new HashMap<>();
		PlacementTabulation.ofCards(PlacementRules.majority(SegmentKind.SHORT), field)
			.rows()
			.forEach((row) -> places.put(row.entry(), row.place()));
		Map<String, Integer> published = new HashMap<>();
		context.getBean(Standings.class)
			.latest(id)
			.orElseThrow()
			.standing()
			.rows()
			.forEach((row) -> published.put(row.entry(), row.place()));
		assertThat(published).isEqualTo(places).hasSize(TEAMS);
	}

}
