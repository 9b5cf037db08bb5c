package rimebook;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

/** A draw repeated in the browser from what its page says. */
@WholeApplication
@BrowserTest
class DrawCheckBrowserTests {

	private final SmallCompetition day;

	private final Page page;

	DrawCheckBrowserTests(@Autowired ApplicationContext context, Browsers screens) {
		this.day = SmallCompetition.running(context, 6, 3);
		this.day.draw(1);
		this.page = screens.signedIn(Role.SECRETARY, "/desk/draw/" + this.day.segment(1));
	}

	@Test
	void anHonestDrawAgrees() {
		this.page.click("#repeat-draw");
		assertThat(result()).hasText("Every ticket and every position agrees with the seed and the names of the draw.");
		assertThat(this.page.locator("table.draw .verdict.signed")).hasCount(6);
		assertThat(this.page.locator("table.draw .verdict.stop")).hasCount(0);
	}

	@Test
	void aTeamMovedUpIsSaidToDiffer() {
		this.page.evaluate("(() => { const rows = document.querySelectorAll('table.draw tr[data-ticket]');"
				+ " rows[0].before(rows[1]); })()");
		this.page.click("#repeat-draw");
		assertThat(result()).hasText("2 positions do not agree; look at the record.");
		assertThat(this.page.locator("table.draw .verdict.stop")).hasCount(2);
	}

	/** Its ticket is looked for until it comes first, too. */
	@Test
	void aTextOfAnotherDrawIsSaidToDifferThoughItHasItsOwnTicketAndPlace() {
		this.page.evaluate("(() => { const [first, second] = document.querySelectorAll('table.draw tr[data-ticket]');"
				+ " const text = first.dataset.digested;"
				+ " for (let n = 0; n === 0 || first.dataset.ticket >= second.dataset.ticket; n++) {"
				+ " first.dataset.digested = n + text; first.dataset.ticket = sha256(n + text); } })()");
		this.page.click("#repeat-draw");
		assertThat(result()).hasText("1 position does not agree; look at the record.");
		assertThat(this.page.locator("table.draw tr[data-ticket]").first().locator(".verdict")).hasText("differs");
	}

	private Locator result() {
		return this.page.locator("#repeat-result");
	}

}
