package rimebook;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.testsupport.Chromium;
import rimebook.testsupport.Complaints;
import rimebook.testsupport.Crew;
import rimebook.testsupport.RequiresChromium;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

/** A draw repeated in the browser from what its page says. */
@WholeApplication
@RequiresChromium
class DrawCheckBrowserTests {

	private final Complaints complaints = new Complaints();

	private final ApplicationContext context;

	private final SmallCompetition day;

	@LocalServerPort
	private int port;

	private Page page;

	DrawCheckBrowserTests(@Autowired ApplicationContext context) {
		this.context = context;
		this.day = SmallCompetition.running(context, 6, 3);
		this.day.draw(1);
	}

	@BeforeEach
	void openTheDraw() {
		this.page = this.complaints.listenTo(Chromium.browser().newContext()).newPage();
		this.page.navigate("http://localhost:" + this.port + "/sign-in");
		this.page.fill("#signInName", Crew.add(this.context, Role.SECRETARY));
		this.page.fill("#password", Crew.PASSWORD);
		this.page.click("main form button");
		this.page.waitForURL("**/desk");
		this.page.navigate("http://localhost:" + this.port + "/desk/draw/" + this.day.segment(1));
	}

	@AfterEach
	void closeThePage() {
		this.page.context().close();
		this.complaints.expectNoFault();
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
		assertThat(result()).hasText("1 positions do not agree; look at the record.");
		assertThat(this.page.locator("table.draw tr[data-ticket]").first().locator(".verdict")).hasText("differs");
	}

	private Locator result() {
		return this.page.locator("#repeat-result");
	}

}
