package rimebook.testsupport;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import org.jspecify.annotations.Nullable;

/**
 * The browser of this machine that tests may drive. It is started once for all tests of
 * this Java machine, which run one after the other on one thread; each takes contexts of
 * its own and closes them.
 */
public final class Chromium {

	private static final Path WHOLE = Path.of("/usr/bin/chromium");

	/**
	 * The same engine without the parts that draw a window: it starts in half the time.
	 */
	private static final Path WITHOUT_WINDOW = Path.of("/usr/bin/chromium-headless-shell");

	private static @Nullable Playwright driver;

	private static @Nullable Browser browser;

	private Chromium() {
	}

	/**
	 * Where the browser is expected: what the system property {@code rimebook.chromium}
	 * says, otherwise the distribution's browser without window, otherwise
	 * {@code /usr/bin/chromium}. Nothing promises that it is there; tests ask for that
	 * with {@link RequiresChromium}.
	 * @return the path of the executable
	 */
	public static Path executable() {
		String named = System.getProperty("rimebook.chromium");
		if (named != null) {
			return Path.of(named);
		}
		return Files.isExecutable(WITHOUT_WINDOW) ? WITHOUT_WINDOW : WHOLE;
	}

	/**
	 * The whole browser where there is one, for what its profile on the disk is about.
	 */
	public static Path whole() {
		return Files.isExecutable(WHOLE) ? WHOLE : executable();
	}

	/** The browser that all tests share; started anew if it died. */
	public static Browser browser() {
		Browser running = browser;
		if (running == null || !running.isConnected()) {
			running = driver().chromium().launch(new BrowserType.LaunchOptions().setExecutablePath(executable()));
			browser = running;
		}
		return running;
	}

	/**
	 * A browser of its own that was told to write in another size.
	 * @param pixels of text that asks for no size, commonly 16
	 */
	public static Browser writing(int pixels) {
		return driver().chromium()
			.launch(new BrowserType.LaunchOptions().setExecutablePath(executable())
				.setArgs(List.of("--blink-settings=defaultFontSize=" + pixels)));
	}

	/** What drives the browser, for tests that start one of their own. */
	public static Playwright driver() {
		Playwright started = driver;
		if (started == null) {
			started = Playwright
				.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
			driver = started;
		}
		return started;
	}

	static boolean isInstalled() {
		return Files.isExecutable(executable());
	}

}
