package rimebook.rulings.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.util.List;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.entries.EntryId;
import rimebook.entries.Entries;
import rimebook.testsupport.Chromium;
import rimebook.testsupport.Crew;
import rimebook.testsupport.RequiresChromium;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

/** A question from the secretary's desk to the referee's stand. */
@WholeApplication
@RequiresChromium
class RulingsBrowserTests {

	private final Browser browser = Chromium.browser();

	@Autowired
	private ApplicationContext context;

	@LocalServerPort
	private int port;

	@Test
	void aQuestionIsAskedRuledOnSupersededAndSeenAtTheStand() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		EntryId first = day.callNext(1).entry();
		String team = this.context.getBean(Entries.class).entry(first).team().name();
		try (BrowserContext desk = this.browser.newContext(); BrowserContext rink = this.browser.newContext()) {
			Page secretary = signedIn(desk, Role.SECRETARY);
			Page referee = signedIn(rink, Role.REFEREE);
			Page stand = rink.newPage();
			stand.navigate(address("/desk/stand/" + day.segment(1)));
			secretary.navigate(address("/desk/rulings?competition=" + day.competition().id()));
			fits(secretary);
			secretary.click("text=Ask the referee");
			secretary.click("form.sheet button.main");
			assertThat(secretary.locator(".summary")).containsText("Choose the team that asks.");
			fits(secretary);
			secretary.selectOption("#entry", first.toString());
			secretary.check("#topic-COSTUME");
			secretary.fill("#question", "May the cord hang loose?");
			secretary.fill("#askedBy", "Mira Sund, team manager");
			secretary.click("form.sheet button.main");
			assertThat(secretary.locator(".notice")).hasText("The question waits for the referee.");
			assertThat(stand.locator("#team-rulings")).containsText("Costume: May the cord hang loose?");
			referee.navigate(address("/desk/rulings?competition=" + day.competition().id() + "&state=open"));
			referee.click("tbody a");
			fits(referee);
			referee.click("text=Give the ruling");
			fits(referee);
			referee.check("#verdict-CONDITIONAL");
			referee.fill("#condition", "if it is sewn on at both ends");
			referee.fill("#grounds", "A cord that cannot come off is part of the costume.");
			referee.click("form.sheet button.main");
			assertThat(referee.locator(".notice")).hasText("The ruling is given.");
			assertThat(stand.locator("#team-rulings")).containsText("Condition: if it is sewn on at both ends");
			fitsAt(stand, 1440, 820);
			referee.click("text=Supersede the ruling");
			assertThat(referee.locator("#grounds")).hasValue("A cord that cannot come off is part of the costume.");
			referee.check("#verdict-NOT_ALLOWED");
			referee.fill("#condition", "");
			referee.fill("#reason", "It came off in practice.");
			referee.click("form.sheet button.main");
			assertThat(referee.locator(".superseded")).containsText("if it is sewn on at both ends");
			fits(referee);
			assertThat(stand.locator("#team-rulings .state")).hasText("not allowed");
			referee.navigate(address("/desk/sheet/" + day.segment(1)));
			assertThat(referee.locator(".announcer li.now")).containsText(team);
			assertThat(referee.locator(".announcer li.now .rulings")).containsText("not allowed");
			fits(referee);
		}
	}

	private Page signedIn(BrowserContext crew, Role role) {
		Page page = crew.newPage();
		page.navigate(address("/sign-in"));
		page.locator("#signInName").fill(Crew.add(this.context, role));
		page.locator("#password").fill(Crew.PASSWORD);
		page.locator("main form button").first().click();
		page.waitForURL((url) -> url.endsWith("/desk"));
		return page;
	}

	private static void fits(Page page) {
		fitsAt(page, 1440, 820, 390, 320);
	}

	private static void fitsAt(Page page, Integer... widths) {
		for (int width : List.of(widths)) {
			page.setViewportSize(width, 900);
			Assertions.assertThat(page.evaluate("document.documentElement.scrollWidth"))
				.as(page.url() + " at " + width)
				.isEqualTo(width);
		}
		Assertions.assertThat(new AxeBuilder(page).analyze().getViolations()).as(page.url()).isEmpty();
	}

	private String address(String path) {
		return "http://localhost:" + this.port + path;
	}

}
