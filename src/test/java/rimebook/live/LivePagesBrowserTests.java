package rimebook.live;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ForcedColors;
import com.microsoft.playwright.options.Media;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.SelectOption;
import com.microsoft.playwright.options.WaitForSelectorState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

@LiveTest
@BrowserTest
class LivePagesBrowserTests {

	private static final String FREE = "/follow/fjord-days/junior/free-skating";

	/** Two teams that have skated. */
	private static final String PAIR = "/two/teams";

	private static final String SECOND = "document.querySelectorAll('.standing details')[1]";

	private final Browsers screens;

	@Autowired
	private Visitor visitor;

	@Autowired
	private FollowerRegister followers;

	private final Stage stage = new Stage();

	LivePagesBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@BeforeEach
	void afterNineTeams() {
		this.followers.leaveAll();
		IntStream.range(0, 7).forEach((i) -> this.stage.free().skate());
		this.stage.free().withdraw();
		this.stage.free().skate();
		this.stage.free().call();
		this.visitor.watch(this.stage);
	}

	@Test
	void pageMovesByItselfAndTheReaderKeepsTheirPlace() {
		try (Page page = open(FREE, 820, new Browser.NewContextOptions())) {
			List<String> complaints = complaints(page);
			page.evaluate("window.sameDocument = true; " + SECOND + ".open = true; " + SECOND
					+ ".querySelector('summary').focus()");
			String opened = (String) page.evaluate(SECOND + ".id");
			hears(page);
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			assertThat(page.evaluate("window.sameDocument")).isEqualTo(true);
			assertThat(page.evaluate("document.getElementById('" + opened + "').open")).isEqualTo(true);
			assertThat(page.evaluate("document.activeElement.closest('details').id")).isEqualTo(opened);
			assertThat(page.evaluate("document.getElementById('heard').textContent"))
				.isEqualTo("With two teams left, Alder leads the event, ahead of Birch & Bramble.");
			assertThat(complaints).isEmpty();
		}
	}

	/** What is being read stays where it is on the screen, wherever its team goes. */
	@Test
	void updateDoesNotMoveTheRowThatIsOpened() {
		try (Page page = open(FREE, 390, new Browser.NewContextOptions())) {
			page.locator(".standing summary").nth(4).click();
			String row = (String) page
				.evaluate("document.querySelectorAll('.standing details')[4].closest('tbody').id");
			page.evaluate("window.scrollTo(0, document.getElementById('" + row + "').offsetTop)");
			hears(page);
			Object before = top(page, row);
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			assertThat(((Number) top(page, row)).doubleValue()).isCloseTo(((Number) before).doubleValue(), within(1.0));
		}
	}

	/** What is not sent again is what the page had, and nothing of it is older. */
	@ParameterizedTest
	@ValueSource(strings = { FREE, "/follow/fjord-days/junior", "/follow/fjord-days", FREE + "/order",
			"/follow/fjord-days/team/00000000-0000-7000-8000-000000000064" })
	void pageThatFollowedIsAsOneThatIsOpenedNow(String path) {
		try (Page page = open(path, 820, new Browser.NewContextOptions()); Page fresh = this.screens.screen(820, 900)) {
			List<String> complaints = complaints(page);
			List<String> asked = new CopyOnWriteArrayList<>();
			page.onResponse((answer) -> asked.add(answer.url()));
			hears(page);
			for (int after = 10; after < 13; after++) {
				String before = seen(page);
				publish(this.stage.free().skate());
				page.waitForCondition(() -> !seen(page).equals(before));
				// What was opened within a second comes from the browser's cache, and
				// moves.
				fresh.navigate(this.screens.service() + path);
				page.waitForCondition(() -> seen(page).equals(seen(fresh)) && !seen(fresh).equals(before));
				assertThat(shown(page)).containsExactlyElementsOf(shown(fresh));
			}
			assertThat(asked).as("the stream brings it").noneMatch((url) -> url.contains("part=live"));
			assertThat(complaints).isEmpty();
		}
	}

	private static String seen(Page page) {
		return (String) page.evaluate("document.getElementById('live').dataset.seen");
	}

	@SuppressWarnings("unchecked")
	private static List<String> shown(Page page) {
		return (List<String>) page.evaluate("""
				() => {
					const shown = document.getElementById("live").cloneNode(true);
					shown.querySelectorAll("[style]").forEach((moved) => moved.removeAttribute("style"));
					return (shown.dataset.tag + shown.innerHTML.replaceAll(/>\\s+</g, "><")).split("><");
				}""");
	}

	private String pair() {
		List<Standing.Row> rows = this.stage.free().versions.get(8).standing().rows();
		return "/" + rows.get(0).entry() + "/" + rows.get(1).entry();
	}

	private static Object top(Page page, String row) {
		return page.evaluate("document.getElementById('" + row + "').getBoundingClientRect().top");
	}

	@Test
	void updateWaitsWhileTextIsSelectedAndSaysSo() {
		try (Page page = open(FREE, 820, new Browser.NewContextOptions())) {
			hears(page);
			page.evaluate("getSelection().selectAllChildren(document.querySelectorAll('.standing .name')[2])");
			String selected = (String) page.evaluate("getSelection().toString()");
			publish(this.stage.free().skate());
			page.locator("#held").waitFor();
			assertThat(page.evaluate("getSelection().toString()")).isEqualTo(selected).isNotEqualTo("");
			assertThat(page.locator("#live").textContent()).contains("After 9 of 12 teams");
			page.evaluate("getSelection().removeAllRanges()");
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			assertThat(page.locator("#held").isVisible()).isFalse();
		}
	}

	@Test
	void boardMovesByItself() {
		try (Page page = open("/follow/fjord-days/board", 1440, new Browser.NewContextOptions())) {
			hears(page);
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
		}
	}

	/** As each does after a while: what is compressed ends without its end. */
	@Test
	void streamThatEndsIsTakenUpAgainWithoutAWord() {
		try (Page page = open(FREE, 820, new Browser.NewContextOptions())) {
			List<String> complaints = complaints(page);
			hears(page);
			this.followers.leaveAll();
			page.waitForCondition(() -> this.followers.count() == 0);
			hears(page);
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			assertThat(page.locator("#adrift").isVisible()).isFalse();
			assertThat(complaints).isEmpty();
		}
	}

	/** An extension of the reader's browser may have taken a row away, or worse. */
	@Test
	void pageThatCannotShowWhatCameAsksForAllOfIt() {
		try (Page page = open(FREE, 820, new Browser.NewContextOptions())) {
			List<String> complaints = complaints(page);
			hears(page);
			page.evaluate("() => { const whole = document.importNode; document.importNode = () => {"
					+ " document.importNode = whole; throw new Error('Nothing to show it in'); }; }");
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			assertThat(complaints).singleElement().asString().contains("Nothing to show it in");
			this.screens.complaints().clear();
		}
	}

	/** A page hears nothing any more, and nobody tells it that the line is dead. */
	@Test
	void pageWhoseStreamIsSwallowedBeginsAnew() throws IOException {
		try (SwallowingProxy proxy = new SwallowingProxy(this.visitor.port()); Page page = through(proxy, FREE, 390)) {
			hears(page);
			proxy.swallowOpen();
			publish(this.stage.free().skate());
			passTimeUntilSeen(page, page.locator("#live").getByText("After 10 of 12 teams"));
			PlaywrightAssertions.assertThat(page.locator("#adrift")).isHidden();
			publish(this.stage.free().skate());
			passTimeUntilSeen(page, page.locator("#live").getByText("After 11 of 12 teams"));
		}
	}

	@Test
	void pageThatReachesNobodySaysSoInSightUntilItDoes() throws IOException {
		try (SwallowingProxy proxy = new SwallowingProxy(this.visitor.port()); Page page = through(proxy, FREE, 390)) {
			hears(page);
			proxy.swallowAll(true);
			publish(this.stage.free().skate());
			page.evaluate("window.scrollTo(0, document.body.scrollHeight)");
			passTimeUntilSeen(page, page.locator("#adrift"));
			assertThat(page.evaluate("document.getElementById('adrift').getBoundingClientRect().top")).isEqualTo(0);
			Looks.drawWindow(page, "live-adrift-390");
			proxy.swallowAll(false);
			passTimeUntilSeen(page, page.locator("#live").getByText("After 10 of 12 teams"));
			page.locator("#adrift").waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
		}
	}

	/** Every stream is taken: the same words, a little later. */
	@ParameterizedTest
	@ValueSource(strings = { FREE, "/follow/fjord-days/board" })
	void pageWithoutAStreamFollowsToo(String path) {
		List<Stream<String>> taken = IntStream.range(0, 20)
			.mapToObj((i) -> this.visitor.lines("/follow/fjord-days/signals"))
			.toList();
		try (Page page = this.screens.screen(1280, 720)) {
			page.waitForResponse("**/moments", () -> page.navigate(path));
			assertThat(this.visitor.get("/follow/fjord-days/signals").statusCode()).isEqualTo(503);
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			assertThat(page.locator("#adrift").isVisible()).isFalse();
		}
		finally {
			taken.forEach(Stream::close);
		}
	}

	/** Asleep in a pocket: nothing is heard, nor is time felt to pass. */
	@Test
	void pageLooksAtOnceWhenItIsSeenOrOnlineAgain() {
		try (Page page = open(FREE, 390, new Browser.NewContextOptions())) {
			hears(page);
			page.waitForResponse("**/moments",
					() -> page.evaluate("document.dispatchEvent(new Event('visibilitychange'))"));
			page.waitForResponse("**/moments", () -> page.evaluate("window.dispatchEvent(new Event('online'))"));
		}
	}

	@ParameterizedTest
	@ValueSource(booleans = { true, false })
	void rowsMoveBrieflyOrNotAtAll(boolean calm) {
		Browser.NewContextOptions options = new Browser.NewContextOptions()
			.setReducedMotion(calm ? ReducedMotion.REDUCE : ReducedMotion.NO_PREFERENCE);
		try (Page page = open(FREE, 820, options)) {
			page.evaluate("() => { window.moves = []; const animate = Element.prototype.animate; "
					+ "Element.prototype.animate = function (frames, how) { window.moves.push(how.duration);"
					+ " return animate.call(this, frames, how); } }");
			hears(page);
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			List<?> moves = (List<?>) page.evaluate("window.moves");
			assertThat(moves).isEqualTo(calm ? List.of() : moves).allMatch((each) -> ((Number) each).intValue() < 300);
			assertThat(moves.isEmpty()).isEqualTo(calm);
		}
	}

	@Test
	void worksWithoutJavaScript() {
		try (Page page = open(FREE, 390, new Browser.NewContextOptions().setJavaScriptEnabled(false))) {
			page.locator(".standing summary").nth(1).click();
			assertThat(page.locator(".standing details").nth(1).getAttribute("open")).isNotNull();
			assertThat(page.content()).contains("http-equiv=\"refresh\"");
		}
	}

	/** Two lists and a button, and an address that can be handed on. */
	@Test
	void twoTeamsAreComparedWithoutJavaScript() {
		try (Page page = open(FREE + "/why?lang=fr", 390,
				new Browser.NewContextOptions().setJavaScriptEnabled(false))) {
			page.locator("#why-one").selectOption(new SelectOption().setIndex(1));
			page.locator("#why-other").selectOption(new SelectOption().setIndex(0));
			page.locator(".choose button").click();
			String[] pair = pair().split("/");
			assertThat(page.url()).endsWith(FREE + "/why/" + pair[2] + "/" + pair[1] + "?lang=fr");
			assertThat(page.locator(".herald").textContent()).contains("devance");
		}
	}

	/**
	 * Kept on the device: a button on the team's page, a card on that of the competition.
	 */
	@Test
	void teamIsFoundByTypingAndFollowed() {
		try (Page page = open("/follow/fjord-days/find", 390, new Browser.NewContextOptions())) {
			page.locator("#find-name").pressSequentially("ALD");
			assertThat(page.locator(".teams li:visible").allTextContents()).hasSize(1)
				.first()
				.asString()
				.contains("Alder");
			page.locator(".teams li:visible a").click();
			page.locator("#follow-team").click();
			page.navigate("/follow/fjord-days");
			page.locator("#followed .team-card").waitFor();
			assertThat(page.locator("#followed").textContent()).contains("Alder", "Free skating");
			Looks.expectNoFinding(page);
		}
	}

	/** The same words in the title, in the live region and on top. */
	@Test
	void titleFollowsTheHeadline() {
		try (Page page = open(FREE, 820, new Browser.NewContextOptions())) {
			hears(page);
			publish(this.stage.free().skate());
			page.locator("#live").getByText("After 10 of 12 teams").waitFor();
			String said = page.locator(".herald > :last-child").textContent();
			assertThat(page.evaluate("document.getElementById('heard').textContent")).isEqualTo(said);
			assertThat(page.title())
				.isEqualTo("Junior, Free skating – " + said.replaceFirst("\\.$", "") + " · Fjord Days · Rimebook");
		}
	}

	@Test
	void opensWithTheKeyboardAlone() {
		try (Page page = open(FREE, 820, new Browser.NewContextOptions())) {
			for (int i = 0; i < 40 && !onSummary(page); i++) {
				page.keyboard().press("Tab");
			}
			page.keyboard().press("Enter");
			assertThat(page.evaluate("document.activeElement.closest('details').open")).isEqualTo(true);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "/", "/follow/fjord-days", "/follow/fjord-days/junior", FREE, FREE + "/order",
			FREE + "/versions", FREE + "/versions/4", FREE + "?lang=fr", FREE + "?lang=fi", FREE + "/pictures",
			FREE + "/why", FREE + "/why" + PAIR, "/follow/fjord-days/find", "/follow/fjord-days/words",
			"/follow/fjord-days/team/00000000-0000-7000-8000-000000000064", "/follow/fjord-days/board" })
	void everyPageFitsAndIsOpenToEverybody(String path) {
		try (Page page = open(path.replace(PAIR, pair()), 320, new Browser.NewContextOptions())) {
			List<String> complaints = complaints(page);
			for (int width : List.of(320, 390, 820, 1440)) {
				page.setViewportSize(width, (width == 1440) ? 810 : 900);
				shoot(page, path, width, "");
			}
			assertThat(page.locator("h1").count()).isEqualTo(1);
			page.evaluate("document.querySelectorAll('details').forEach((each) => each.open = true)");
			for (int width : List.of(1440, 820, 390, 320)) {
				page.setViewportSize(width, 900);
				assertThat(page.evaluate("document.documentElement.scrollWidth")).as(path + " at " + width)
					.isEqualTo(width);
			}
			Looks.expectNoFinding(page);
			page.setViewportSize(1440, 900);
			Looks.expectNoFinding(page);
			assertThat(complaints).as("console").isEmpty();
		}
	}

	/**
	 * WCAG 2.2, 1.4.4: text at 200 % without loss, for whoever has told the browser so.
	 */
	@Test
	void textOfTwiceTheSizeFits() {
		Browsers large = this.screens.writing(32);
		for (String path : List.of("/follow/fjord-days", "/follow/fjord-days/junior", FREE, FREE + "/order")) {
			Page page = large.screen(1280, 720);
			page.navigate(path);
			assertThat(page.evaluate("getComputedStyle(document.documentElement).fontSize")).isEqualTo("32px");
			for (int width : List.of(390, 820, 1440)) {
				page.setViewportSize(width, 900);
				shoot(page, path, width, "-twice");
				assertThat(page.evaluate("document.documentElement.scrollWidth")).as(path + " at " + width)
					.isEqualTo(width);
				assertThat(page.evaluate("[...document.querySelectorAll('.standing .name')].filter((name) => "
						+ "name.getBoundingClientRect().height > 3.2 * parseFloat(getComputedStyle(name).fontSize)).length"))
					.as("names broken in pieces at " + width)
					.isEqualTo(0);
			}
		}
	}

	/** Whoever sees only two colours still sees which team is on the ice. */
	@ParameterizedTest
	@ValueSource(strings = { "/follow/fjord-days/junior", FREE, FREE + "/order", "/follow/fjord-days/board" })
	void forcedColoursKeepWhatIsMarked(String path) {
		try (Page page = open(path, 1440, new Browser.NewContextOptions().setForcedColors(ForcedColors.ACTIVE))) {
			shoot(page, path, 1440, "-forced");
			assertThat(page.evaluate(
					"getComputedStyle(document.querySelector('.ice.now, .starts .now, .block.now')).borderInlineStartWidth"))
				.isNotEqualTo("1px");
		}
	}

	@Test
	void boardStandsUprightToo() {
		try (Page page = open("/follow/fjord-days/board", 1080, new Browser.NewContextOptions())) {
			page.setViewportSize(1080, 1920);
			shoot(page, "/follow/fjord-days/board", 1080, "-upright");
			assertThat(page.evaluate("document.documentElement.scrollHeight")).isEqualTo(1920);
		}
	}

	/** Until the next team is called the result stays, with all places. */
	@Test
	void boardKeepsTheResultUntilTheNextCall() {
		this.stage.free().skate();
		this.stage.free().skate();
		this.stage.free().skate();
		this.stage.free().correct("Judge 1: 5.0 became 5.1");
		this.stage.free().sign();
		this.visitor.watch(this.stage);
		try (Page page = open("/follow/fjord-days/board", 1440, new Browser.NewContextOptions())) {
			page.setViewportSize(1440, 810);
			shoot(page, "/follow/fjord-days/board", 1440, "-over");
			assertThat(page.locator(".result li").count()).as("on two sheets").isEqualTo(11);
			assertThat(page.locator(".result .turn:not([hidden])").count()).as("shown in turn").isEqualTo(1);
			assertThat(page.locator(".result li").first().textContent()).contains("1.");
			assertThat(page.locator(".screen").textContent()).doesNotContain("–");
		}
	}

	@ParameterizedTest
	@ValueSource(ints = { 390, 1440 })
	void oneTeamOpened(int width) {
		try (Page page = open(FREE, width, new Browser.NewContextOptions())) {
			page.locator(".standing summary").nth(1).click();
			assertThat(page.locator(".standing .why").nth(1).isVisible()).isTrue();
			shoot(page, FREE, width, "-open");
		}
	}

	@Test
	void printsWithEveryMarkOnThreeSheets() {
		try (Page page = open(FREE, 680, new Browser.NewContextOptions())) {
			page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
			shoot(page, FREE, 680, "-print");
			byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4"));
			assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).contains("/Type /Pages", "/Count 3");
		}
	}

	/**
	 * A page on the other side of the proxy, with a clock that can be moved on. How long
	 * a part is waited for is told by the network, which knows nothing of that clock.
	 */
	private Page through(SwallowingProxy proxy, String path, int width) {
		Page page = this.screens.screen(width, 500);
		page.clock().install();
		page.navigate("http://localhost:" + proxy.port() + path);
		page.evaluate("document.getElementById('following').dataset.patience = 1000");
		return page;
	}

	/**
	 * Let a second pass on the page for each fifth of one here, in which an answer that
	 * comes has the time to come.
	 */
	private static void passTimeUntilSeen(Page page, Locator words) {
		await().pollInSameThread().pollInterval(Duration.ofMillis(200)).atMost(Duration.ofSeconds(30)).until(() -> {
			page.clock().fastForward(1000);
			return words.isVisible();
		});
	}

	private Page open(String path, int width, Browser.NewContextOptions options) {
		Page page = this.screens.opened(options.setViewportSize(width, (width == 1440) ? 810 : 900));
		page.navigate(path);
		return page;
	}

	/** Whatever the browser writes to its console is a fault. */
	private static List<String> complaints(Page page) {
		List<String> complaints = new CopyOnWriteArrayList<>();
		page.onConsoleMessage((message) -> complaints.add(message.text()));
		page.onPageError(complaints::add);
		return complaints;
	}

	private static boolean onSummary(Page page) {
		return (boolean) page.evaluate("document.activeElement.matches('.standing summary')");
	}

	/** Wait until the page is connected, so that what comes next comes as a signal. */
	private void hears(Page page) {
		page.waitForCondition(() -> this.followers.count() > 0);
	}

	private void publish(ResultVersion version) {
		this.visitor.publish(version.scopeId(), version.number());
	}

	private static void shoot(Page page, String path, int width, String suffix) {
		String name = "live" + path.replaceAll("[/?=]", "_") + "-" + width + suffix;
		if (path.endsWith("board")) {
			Looks.drawWindow(page, name);
		}
		else {
			Looks.draw(page, name);
		}
	}

}
