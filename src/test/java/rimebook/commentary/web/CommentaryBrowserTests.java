package rimebook.commentary.web;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Instant;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.CommentaryLinks;
import rimebook.performances.PerformanceView;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** The commentator's page while teams skate: nothing that is read or written moves. */
@WholeApplication
@BrowserTest
class CommentaryBrowserTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private CommentaryLinks links;

	private final Browsers screens;

	CommentaryBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void whatIsReadAndWrittenStaysWhileTeamsSkate() throws IOException {
		SmallCompetition day = SmallCompetition.running(this.context, 5, 3);
		day.open(1);
		day.skateNext(1);
		PerformanceView first = day.callNext(1);
		String token = this.links.issue(new CommentaryLinks.IssueLink(day.competition().id().value(), "Aino Lumi",
				false, Instant.now().plusSeconds(3600)), SmallCompetition.REFEREE);
		try (Page page = this.screens.screen(390, 844)) {
			page.navigate("/commentary#" + token);
			Locator note = page.locator("#note-now-" + first.entry());
			note.pressSequentially("Third time here");
			assertThat(page.url()).endsWith("/commentary");
			assertThat(page.evaluate("document.documentElement.scrollWidth <= window.innerWidth")).isEqualTo(true);

			day.sendAll(first);
			day.close(first);
			assertThat(page.locator("#c-last")).containsText("Just in");
			assertThat(page.locator("#held")).isVisible();
			assertThat(note).isFocused();
			assertThat(note).hasValue("Third time here");
			note.blur();
			assertThat(note).hasCount(0);
			assertThat(page.locator("#held")).isHidden();

			page.evaluate("document.getElementById('c-order-all').open = true");
			PerformanceView next = day.performances(1).get(2);
			String line = "document.getElementById('c-order-" + next.entry() + "')";
			page.evaluate(line + ".scrollIntoView({ block: 'center', behavior: 'instant' })");
			double top = top(page, line);
			day.skateNext(1);
			assertThat(page.locator("#c-order-" + next.entry())).containsText("Has skated");
			assertThat(top(page, line)).isCloseTo(top, within(1.5));
			assertThat(page.evaluate("document.getElementById('c-order-all').open")).isEqualTo(true);
			assertThat(page.locator("#note-order-" + first.entry())).hasValue("Third time here");

			page.reload();
			assertThat(page.locator("#note-order-" + first.entry())).hasValue("Third time here");
			Download file = page.waitForDownload(() -> page.click("#c-notes-export"));
			assertThat(Files.readString(file.path())).contains("Team", "Third time here");
			page.click("#c-notes-erase");
			assertThat(page.locator("#note-order-" + first.entry())).hasValue("Third time here");
			page.click("#c-notes-erase");
			assertThat(page.locator("#note-order-" + first.entry())).hasValue("");
		}
	}

	private static double top(Page page, String element) {
		return ((Number) page.evaluate(element + ".getBoundingClientRect().top")).doubleValue();
	}

}
