package rimebook.testsupport;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.BoundingBox;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.SeatTakeovers;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Browsers of the rink: each screen has its own cookies and its own storage. None of
 * their scripts may fail; a test that lets one fail says so.
 */
public final class Tablets implements AutoCloseable {

	/** A tablet out of contact tries again after 15 seconds at the latest. */
	private static final int LONGEST_RETRY = 20_000;

	/** About as long as names of teams become. */
	public static final String LONG_NAME = "The Northern Lanterns of Lake Everwinter Skating Society";

	private final String service;

	private final Browser browser;

	private final List<BrowserContext> ofProfile = new ArrayList<>();

	private final Complaints complaints = new Complaints();

	public Tablets(int port) {
		this(port, Chromium.browser());
	}

	/** Tablets with a browser that was told something of its own. */
	public Tablets(int port, Browser browser) {
		this.browser = browser;
		PlaywrightAssertions.setDefaultAssertionTimeout(LONGEST_RETRY);
		this.service = "http://localhost:" + port;
	}

	/** An empty screen of that size in CSS pixels. */
	public Page screen(int width, int height) {
		return opened(new Browser.NewContextOptions().setViewportSize(width, height));
	}

	/** An empty screen of that size that is touched. */
	public Page touchScreen(int width, int height) {
		return opened(new Browser.NewContextOptions().setViewportSize(width, height).setHasTouch(true));
	}

	private Page opened(Browser.NewContextOptions options) {
		return this.complaints.listenTo(this.browser.newContext(options.setBaseURL(this.service))).newPage();
	}

	/** A browser of its own whose memory lies in that folder and outlives it. */
	public BrowserContext ofProfile(Path folder) {
		BrowserContext own = Chromium.driver()
			.chromium()
			.launchPersistentContext(folder,
					new BrowserType.LaunchPersistentContextOptions().setExecutablePath(Chromium.whole())
						.setBaseURL(this.service)
						.setViewportSize(1280, 800)
						.setHasTouch(true));
		this.ofProfile.add(own);
		return this.complaints.listenTo(own);
	}

	/** A tablet upright that has taken the seat of the code and shows its card. */
	public Page joined(String code) {
		Page page = screen(768, 1024);
		join(page, code);
		return page;
	}

	/**
	 * A tablet that has taken a seat over from one that is alive, with the referee's yes.
	 */
	public Page takingOver(String code, ApplicationContext context) {
		Page page = screen(768, 1024);
		takeOver(page, code, context);
		return page;
	}

	public static void takeOver(Page page, String code, ApplicationContext context) {
		page.navigate("/judge");
		page.fill("#code", code);
		page.click("button[type=submit]");
		page.waitForURL("**/judge/waiting");
		SeatTakeovers takeovers = context.getBean(SeatTakeovers.class);
		takeovers.open().forEach((one) -> takeovers.answer(one.seat(), one.askedAt(), true, SmallCompetition.REFEREE));
		page.waitForURL("**/judge/card");
	}

	public static void join(Page page, String code) {
		page.navigate("/judge");
		page.fill("#code", code);
		page.click("button[type=submit]");
		page.waitForURL("**/judge/card");
	}

	/**
	 * Load the card anew once it says that all typed on it is kept; what was typed in the
	 * moment before may be lost, and no screen says otherwise.
	 */
	public static void reload(Page card) {
		PlaywrightAssertions.assertThat(card.locator(".card")).hasAttribute("data-kept", "true");
		card.reload();
	}

	/** Let a tablet be told another table than the service's. */
	public static void tell(Page card, UnaryOperator<String> other) {
		card.route("**/api/judge/table*", (route) -> {
			APIResponse table = route.fetch();
			route.fulfill(new Route.FulfillOptions().setResponse(table).setBody(other.apply(table.text())));
		});
	}

	public static String withALongName(String table) {
		return table.replaceFirst("\"team\":\"[^\"]*\"", "\"team\":\"" + LONG_NAME + "\"");
	}

	/** As told when the cards of No. 12 were opened again. */
	public static String withOneOpenedAgain(String table) {
		return withALongName(table).replaceFirst("\"reopened\":null", """
				"reopened":{"performance":"01a20000-0000-7000-8000-0000000000aa","startNumber":12,
				"team":"Team 12","club":"Club","remarks":[],"points":null}""");
	}

	/**
	 * Expect that nothing of a tablet's card has to be scrolled to, that no key is
	 * covered, and that keys have 14 mm: 84 CSS pixels on a screen of 10 inches.
	 */
	public static void expectAllInSight(Page card, String keys) {
		int width = card.viewportSize().width;
		int height = card.viewportSize().height;
		assertThat(card.evaluate("document.documentElement.scrollHeight")).isEqualTo(height);
		assertThat(card.evaluate("document.documentElement.scrollWidth")).isEqualTo(width);
		double send = card.locator("#send").boundingBox().y;
		for (Locator key : card.locator(keys).all()) {
			BoundingBox box = key.boundingBox();
			assertThat(box.height).isGreaterThanOrEqualTo(84);
			assertThat(box.width).isGreaterThanOrEqualTo(84);
			assertThat(box.y + box.height).as("above the button to send").isLessThanOrEqualTo(send);
			assertThat(box.y).as("below the notices").isGreaterThanOrEqualTo(bottom(card, ".head"));
		}
		assertThat(bottom(card, "#truth")).isLessThanOrEqualTo(height);
	}

	private static double bottom(Page card, String part) {
		BoundingBox box = card.locator(part).boundingBox();
		return box.y + box.height;
	}

	/** A laptop at which somebody has signed in. */
	public Page signedIn(String name, String password) {
		Page page = screen(1440, 900);
		page.navigate("/sign-in");
		page.fill("[name=signInName]", name);
		page.fill("[name=password]", password);
		page.click("form[action='/sign-in'] button[type=submit]");
		page.waitForURL("**/desk");
		return page;
	}

	/** Expect that the page as it is breaks no rule of WCAG 2.2, levels A and AA. */
	public static void expectAccessible(Page page) {
		var found = new AxeBuilder(page).withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
			.analyze()
			.getViolations()
			.stream()
			.map((rule) -> rule.getId() + " " + rule.getNodes().stream().map((node) -> node.getHtml()).toList())
			.toList();
		assertThat(found).as(page.url()).isEmpty();
	}

	/** What consoles complained about so far; emptied by a test that made them. */
	public List<String> complaints() {
		return this.complaints.all();
	}

	@Override
	public void close() {
		this.browser.contexts().forEach(Tablets::close);
		this.ofProfile.forEach(Tablets::close);
		this.complaints.expectNoFault();
	}

	private static void close(BrowserContext context) {
		try {
			context.pages().forEach(Page::unrouteAll);
			context.close();
		}
		catch (PlaywrightException ex) {
			// The browser of a profile may have been killed, as in a test.
		}
	}

}
