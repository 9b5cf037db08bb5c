package rimebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.PlaywrightAssertions;

import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;

/**
 * The screens that are open in a rink at the same time, and a table of what each said
 * after each act.
 */
final class Screens {

	private static final int LONGEST = 140;

	private final Browsers browsers;

	private final Map<String, Screen> screens = new LinkedHashMap<>();

	private final List<String> lines = new ArrayList<>();

	Screens(Browsers browsers) {
		this.browsers = browsers;
	}

	/** What is looked at, and which part of it is told in the table. */
	private record Screen(Page page, String told) {
	}

	/** A screen that shows that page to whoever passes by. */
	Page open(String name, String path, String told) {
		Page page = this.browsers.screen(1440, 900);
		page.navigate(path);
		return kept(name, page, told);
	}

	/** A tablet that took the seat of the code. */
	Page tablet(String name, String code, String told) {
		return kept(name, this.browsers.joined(code), told);
	}

	/** Tell from now on of that screen as well. */
	Page kept(String name, Page page, String told) {
		this.screens.put(name, new Screen(page, told));
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

	/** Draw every screen as it is now. */
	private void draw() {
		this.screens.forEach((name, screen) -> Looks.draw(screen.page(), "rehearsal-" + name.replace(' ', '-')));
	}

	/** Keep the table where the build keeps what it makes, and draw every screen. */
	void keep(Path table) {
		try {
			Files.createDirectories(table.getParent());
			String head = "| What was done | " + String.join(" | ", this.screens.keySet()) + " |\n"
					+ "|---".repeat(this.screens.size() + 1) + "|\n";
			Files.writeString(table, head + String.join("\n", this.lines) + "\n");
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		draw();
	}

}
