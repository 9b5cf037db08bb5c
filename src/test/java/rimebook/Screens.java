package rimebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.PlaywrightAssertions;

import rimebook.testsupport.Chromium;
import rimebook.testsupport.Complaints;
import rimebook.testsupport.Crew;

/**
 * The screens that are open in a rink at the same time, what their consoles complain
 * about, and a table of what each said after each act.
 */
final class Screens {

	private static final int LONGEST = 140;

	private final Browser browser = Chromium.browser();

	private final String service;

	private final Map<String, Screen> screens = new LinkedHashMap<>();

	private final Complaints complaints = new Complaints();

	private final List<String> lines = new ArrayList<>();

	Screens(int port) {
		this.service = "http://localhost:" + port;
	}

	/** What is looked at, and which part of it is told in the table. */
	private record Screen(Page page, String told) {
	}

	/** A screen that shows that page to whoever passes by. */
	Page open(String name, String path, String told) {
		Page page = page(1440, 900);
		page.navigate(path);
		return kept(name, page, told);
	}

	/** A desk at which somebody has signed in; it is told of by itself, if at all. */
	Page signedIn(String name, String signInName) {
		Page page = page(1440, 900);
		page.navigate("/sign-in");
		page.fill("[name=signInName]", signInName);
		page.fill("[name=password]", Crew.PASSWORD);
		page.locator("[name=password]").press("Enter");
		page.waitForURL("**/desk");
		return page;
	}

	/** A tablet that took the seat of the code. */
	Page tablet(String name, String code, String told) {
		Page page = page(768, 1024);
		page.navigate("/judge");
		page.fill("[name=code]", code);
		page.locator("[name=code]").press("Enter");
		page.waitForURL("**/judge/card");
		return kept(name, page, told);
	}

	/** Tell from now on of that screen as well. */
	Page kept(String name, Page page, String told) {
		this.screens.put(name, new Screen(page, told));
		return page;
	}

	private Page page(int width, int height) {
		Page page = this.complaints
			.listenTo(this.browser
				.newContext(new Browser.NewContextOptions().setBaseURL(this.service).setViewportSize(width, height)))
			.newPage();
		page.setDefaultTimeout(15_000);
		return page;
	}

	/** Expect that a screen comes to say that, without being asked again. */
	void expect(String name, String... words) {
		Screen screen = this.screens.get(name);
		for (String word : words) {
			PlaywrightAssertions.assertThat(screen.page().locator("body")).containsText(word);
		}
	}

	/** Write down what every screen says after that act. */
	void told(String act) {
		StringBuilder line = new StringBuilder("| " + act);
		this.screens.values().forEach((screen) -> line.append(" | ").append(words(screen)));
		this.lines.add(line.append(" |").toString());
	}

	private static String words(Screen screen) {
		String all = String.join(" · ", texts(screen, 3)).replaceAll("\\s+", " ").replace("|", "/").strip();
		return (all.length() <= LONGEST) ? all : all.substring(0, LONGEST) + "…";
	}

	/** A page that is just being left is read once it is there. */
	private static List<String> texts(Screen screen, int attempts) {
		try {
			screen.page().waitForLoadState();
			return screen.page().locator(screen.told()).allInnerTexts();
		}
		catch (PlaywrightException ex) {
			if (attempts == 1) {
				throw ex;
			}
			return texts(screen, attempts - 1);
		}
	}

	/** What went wrong on any page so far, in the order in which it did. */
	List<String> complaints() {
		return this.complaints.all();
	}

	/** Draw every screen as it is now into a folder. */
	private void draw(Path folder) {
		this.screens.forEach((name, screen) -> screen.page()
			.screenshot(new Page.ScreenshotOptions().setFullPage(true)
				.setPath(folder.resolve("rehearsal-" + name.replace(' ', '-') + ".png"))));
	}

	/** Keep the table where the build keeps what it makes, and close everything. */
	void close(Path table) {
		try {
			Files.createDirectories(table.getParent());
			String head = "| What was done | " + String.join(" | ", this.screens.keySet()) + " |\n"
					+ "|---".repeat(this.screens.size() + 1) + "|\n";
			Files.writeString(table, head + String.join("\n", this.lines) + "\n");
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		draw(table.resolveSibling("screens"));
		this.browser.contexts().forEach(BrowserContext::close);
	}

}
