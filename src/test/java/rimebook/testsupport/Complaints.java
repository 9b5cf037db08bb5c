package rimebook.testsupport;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;

import com.microsoft.playwright.BrowserContext;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What the consoles of open pages complain about: faults of our scripts, first of all.
 */
public final class Complaints {

	/** What is said of an answer or a lost connection that a test provoked. */
	private static final Pattern ANSWER = Pattern
		.compile("Failed to load resource|htmx:(afterRequest|sendError|responseError|timeout)$");

	private final List<String> heard = new CopyOnWriteArrayList<>();

	/** Listen to all pages of a browser's window, those opened later too. */
	public BrowserContext listenTo(BrowserContext window) {
		window.onWebError((fault) -> this.heard.add(fault.page().url() + ": " + fault.error()));
		window.onConsoleMessage((message) -> {
			if (message.type().equals("error")) {
				this.heard.add(message.location() + ": " + message.text());
			}
		});
		return window;
	}

	/** Everything so far, in the order in which it came. */
	public List<String> all() {
		return this.heard;
	}

	/** Expect that no script failed, whatever the service answered. */
	public void expectNoFault() {
		assertThat(this.heard).filteredOn(ANSWER.asPredicate().negate()).isEmpty();
	}

}
