package rimebook.testsupport;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import com.microsoft.playwright.APIRequestContext;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.RequestOptions;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import org.jsoup.Jsoup;
import org.jsoup.nodes.FormElement;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.accounts.SeatTakeovers;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Browsers of the rink: each screen has its own cookies and its own storage. None of
 * their scripts may fail; a test that lets one fail says so. They are asked for by the
 * tests that are a {@link BrowserTest}, which closes them.
 */
public final class Browsers implements AutoCloseable {

	/** A card that waits is sent again after 15 seconds at the latest. */
	private static final int LONGEST_RETRY = 20_000;

	private final Supplier<ApplicationContext> context;

	private final Complaints complaints;

	private final List<AutoCloseable> opened = new ArrayList<>();

	private Supplier<Browser> browser = Chromium::browser;

	private Supplier<String> service;

	Browsers(Supplier<ApplicationContext> context) {
		this(context, () -> context.get().getEnvironment().getRequiredProperty("local.server.port"), new Complaints());
		PlaywrightAssertions.setDefaultAssertionTimeout(LONGEST_RETRY);
	}

	private Browsers(Supplier<ApplicationContext> context, Supplier<String> port, Complaints complaints) {
		this.context = context;
		this.complaints = complaints;
		this.service = () -> "http://localhost:" + port.get();
	}

	/** Go to a service that is not that of the test's application context. */
	public void goTo(int port) {
		this.service = () -> "http://localhost:" + port;
	}

	/** Where the service is, without a path. */
	public String service() {
		return this.service.get();
	}

	/**
	 * Browsers that were told to write in another size; they are closed with these.
	 * @param pixels of text that asks for no size, commonly 16
	 */
	public Browsers writing(int pixels) {
		Browser large = Chromium.writing(pixels);
		Browsers others = new Browsers(this.context, () -> "", this.complaints);
		others.service = this.service;
		others.browser = () -> large;
		this.opened.add(large);
		return others;
	}

	/** An empty screen of that size in CSS pixels. */
	public Page screen(int width, int height) {
		return opened(new Browser.NewContextOptions().setViewportSize(width, height));
	}

	/** An empty screen of that size that is touched. */
	public Page touchScreen(int width, int height) {
		return opened(new Browser.NewContextOptions().setViewportSize(width, height).setHasTouch(true));
	}

	/**
	 * An empty screen that is as the options say. Unless they say otherwise it has no
	 * service worker, as most rinks have no TLS; in a test this machine would count as
	 * safe.
	 */
	public Page opened(Browser.NewContextOptions options) {
		if (options.serviceWorkers == null) {
			options.setServiceWorkers(ServiceWorkerPolicy.BLOCK);
		}
		return kept(this.browser.get().newContext(options.setBaseURL(service()))).newPage();
	}

	/** A browser of its own whose memory lies in that folder and outlives it. */
	public BrowserContext ofProfile(Path folder) {
		return kept(Chromium.driver()
			.chromium()
			.launchPersistentContext(folder,
					new BrowserType.LaunchPersistentContextOptions().setExecutablePath(Chromium.whole())
						.setBaseURL(service())
						.setServiceWorkers(ServiceWorkerPolicy.BLOCK)
						.setViewportSize(1280, 800)
						.setHasTouch(true)));
	}

	private BrowserContext kept(BrowserContext window) {
		this.opened.add(() -> close(window));
		return this.complaints.listenTo(window);
	}

	/** A tablet upright that has the seat of the code and shows its card. */
	public Page joined(String code) {
		Page page = screen(768, 1024);
		join(page, code);
		return page;
	}

	/** Let a tablet take the seat of the code, as its page does, and show its card. */
	public void join(Page page, String code) {
		send(page, "/judge", Map.of("code", code), "/judge/card");
		page.navigate("/judge/card");
	}

	/** Let somebody type the code on the page of a tablet and take the seat. */
	public static void joinByHand(Page page, String code) {
		page.navigate("/judge");
		page.fill("#code", code);
		page.click("button[type=submit]");
		page.waitForURL("**/judge/card");
	}

	/**
	 * A tablet that has taken a seat over from one that is alive, with the referee's yes.
	 */
	public Page takingOver(String code) {
		Page page = screen(768, 1024);
		takeOver(page, code);
		return page;
	}

	/** Let a tablet take a seat over from one that is alive, with the referee's yes. */
	public void takeOver(Page page, String code) {
		page.navigate("/judge");
		page.fill("#code", code);
		page.click("button[type=submit]");
		page.waitForURL("**/judge/waiting");
		SeatTakeovers takeovers = this.context.get().getBean(SeatTakeovers.class);
		takeovers.open().forEach((one) -> takeovers.answer(one.seat(), one.askedAt(), true, SmallCompetition.REFEREE));
		page.waitForURL("**/judge/card");
	}

	/** A laptop at which somebody of that role has signed in; it shows no page yet. */
	public Page signedIn(Role role) {
		return signedIn(Crew.add(this.context.get(), role));
	}

	/** A laptop at which somebody of that role has signed in and looks at a page. */
	public Page signedIn(Role role, String path) {
		Page page = signedIn(role);
		page.navigate(path);
		return page;
	}

	/** A laptop at which somebody of the crew has signed in; it shows no page yet. */
	public Page signedIn(String name) {
		Page page = screen(1440, 900);
		send(page, "/sign-in", Map.of("signInName", name, "password", Crew.PASSWORD), "/desk");
		return page;
	}

	/** What the form of a page sends, without the time that drawing two pages takes. */
	private static void send(Page page, String path, Map<String, String> typed, String next) {
		APIRequestContext http = page.context().request();
		FormElement form = (FormElement) Jsoup.parse(http.get(path).text())
			.expectFirst("form[action=" + path + "][method=post]");
		FormData fields = FormData.create();
		form.formData()
			.stream()
			.filter((field) -> !typed.containsKey(field.key()))
			.forEach((field) -> fields.set(field.key(), field.value()));
		typed.forEach(fields::set);
		APIResponse answer = http.post(path, RequestOptions.create().setForm(fields).setMaxRedirects(0));
		assertThat(answer.headers()).as(answer::text)
			.hasEntrySatisfying("location", (to) -> assertThat(to).endsWith(next));
	}

	/** What consoles complained about so far; emptied by a test that made them. */
	public List<String> complaints() {
		return this.complaints.all();
	}

	/** Close all and expect that no script failed. */
	@Override
	public void close() {
		for (AutoCloseable one : this.opened) {
			try {
				one.close();
			}
			catch (Exception ex) {
				throw new IllegalStateException("A browser could not be closed", ex);
			}
		}
		this.opened.clear();
		this.complaints.expectNoFault();
	}

	private static void close(BrowserContext window) {
		try {
			window.pages().forEach(Page::unrouteAll);
			window.close();
		}
		catch (PlaywrightException ex) {
			// Its browser may have been killed, as in a test, or closed before.
		}
	}

}
