package rimebook.keying;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.util.List;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.panels.SeatView;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.Chromium;
import rimebook.testsupport.Complaints;
import rimebook.testsupport.Crew;
import rimebook.testsupport.RequiresChromium;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

/** Two people at two laptops key in the same cards, with the keyboard alone. */
@WholeApplication
@RequiresChromium
class PaperKeyingBrowserTests {

	private final Browser browser = Chromium.browser();

	private final Complaints complaints = new Complaints();

	@Autowired
	private ApplicationContext context;

	@LocalServerPort
	private int port;

	private SmallCompetition day;

	private String keying;

	@BeforeEach
	void aTeamIsOnTheIce() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.keying = "/desk/keying/" + this.day.open(1);
		this.day.callNext(1);
	}

	@AfterEach
	void noScriptFailed() {
		this.complaints.expectNoFault();
	}

	@Test
	void aDifferenceBetweenTwoPeopleIsSettledWithThePaper() {
		try (BrowserContext one = this.browser.newContext(); BrowserContext other = this.browser.newContext()) {
			Page first = signedIn(one, Role.ACCOUNTANT);
			Page second = signedIn(other, Role.REFEREE);
			Page stand = other.newPage();
			stand.navigate(address("/desk/stand/" + this.day.segment(1)));
			first.navigate(address(this.keying + "/cards/1"));
			type(first, "49", "5.1");
			first.waitForURL((url) -> url.endsWith("/cards/2"));
			type(first, "5,3", "54");
			first.waitForURL((url) -> url.endsWith("/cards/3"));
			assertThat(stand.locator("#close-missing")).containsText("Judge 2 (keyed once, by The accountant");
			assertThat(stand.locator("#paper")).containsText("second keying missing");
			second.navigate(address(this.keying));
			Assertions.assertThat(second.content()).doesNotContain("4.9", "5.3");
			second.navigate(address(this.keying + "/cards/1"));
			Assertions.assertThat(second.content()).doesNotContain("4.9");
			type(second, "4.9", "5.1");
			second.waitForURL((url) -> url.endsWith("/cards/2"));
			assertThat(second.locator(".notice")).hasText("The card of Judge 1 is received.");
			type(second, "3.5", "5.4");
			second.waitForURL((url) -> url.endsWith("/settle"));
			assertThat(second.locator("tr.disputed")).hasCount(1);
			assertThat(second.locator("tr.disputed")).containsText("differs");
			assertThat(second.locator("[name='lines[1].typed']")).hasValue("5.4");
			fits(second);
			second.click("main form button[type=submit]");
			assertThat(second.locator(".summary")).containsText("The first mark must be from 0.0 to 6.0");
			second.locator(".said label").first().click();
			second.click("main form button[type=submit]");
			assertThat(second.locator(".notice")).hasText("The card of Judge 2 is settled and received.");
			assertThat(stand.locator(".seat-list li.in")).hasCount(2);
			assertThat(stand.locator(".seat-list")).containsText("5.3 / 5.4");
			fits(second);
		}
	}

	@Test
	void theSubstitutesPaperIsNotTheOneOfJudge1() {
		SmallCompetition withSubstitute = SmallCompetition.running(this.context, 2, 3);
		withSubstitute.seatSubstitute();
		String desk = "/desk/keying/" + withSubstitute.open(1);
		withSubstitute.callNext(1);
		try (BrowserContext one = this.browser.newContext(); BrowserContext other = this.browser.newContext()) {
			for (Page page : List.of(signedIn(one, Role.ACCOUNTANT), signedIn(other, Role.REFEREE))) {
				page.navigate(address(desk));
				assertThat(page.locator("thead")).containsText("S1");
				page.locator(".seat-links a").last().click();
				assertThat(page.locator("h1")).containsText("Substitute");
				type(page, "4.1", "4.2");
				assertThat(page.locator(".notice")).isVisible();
			}
			Page page = other.pages().get(0);
			page.navigate(address(desk));
			assertThat(page.locator(".seat-links li").last()).containsText("keyed in");
			assertThat(page.locator(".seat-links li").first()).containsText("card missing");
		}
	}

	@Test
	void aTabletThatSpeaksMeanwhileIsShownBesideThePaper() {
		try (BrowserContext one = this.browser.newContext()) {
			Page page = signedIn(one, Role.ACCOUNTANT);
			page.navigate(address(this.keying + "/cards/1"));
			fits(page);
			type(page, "5.6", "5.7");
			page.waitForURL((url) -> url.endsWith("/cards/2"));
			SeatView seat = this.day.seats().get(0);
			this.day.send(this.day.performances(1).get(0), seat, 1, new CardMarks(560, 580));
			page.navigate(address(this.keying));
			assertThat(page.locator(".seat-links li").first()).containsText("keyed otherwise than the tablet sent it");
			page.click("text=Settle Judge 1");
			assertThat(page.locator(".caution")).containsText("is not what the judge’s tablet sent");
			fits(page);
			page.fill("[name='lines[1].typed']", "58");
			page.click("main form button[type=submit]");
			assertThat(page.locator(".seat-links li").first()).containsText("received from the tablet");
		}
	}

	/** Enter goes on from field to field, then to the button, which sends. */
	private static void type(Page page, String... typed) {
		page.locator("[name='lines[0].typed']").focus();
		for (String each : typed) {
			page.keyboard().type(each);
			page.keyboard().press("Enter");
		}
		page.keyboard().press("Enter");
	}

	private Page signedIn(BrowserContext crew, Role role) {
		this.complaints.listenTo(crew);
		Page page = crew.newPage();
		page.navigate(address("/sign-in"));
		page.locator("#signInName").fill(Crew.add(this.context, role));
		page.locator("#password").fill(Crew.PASSWORD);
		page.locator("main form button").first().click();
		page.waitForURL((url) -> url.endsWith("/desk"));
		return page;
	}

	private static void fits(Page page) {
		for (int width : List.of(1440, 820, 390, 320)) {
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
