package rimebook.keying;

import java.util.List;

import com.microsoft.playwright.Page;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.panels.SeatView;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

/** Two people at two laptops key in the same cards, with the keyboard alone. */
@WholeApplication
@BrowserTest
class PaperKeyingBrowserTests {

	private final Browsers screens;

	@Autowired
	private ApplicationContext context;

	private SmallCompetition day;

	private String keying;

	PaperKeyingBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@BeforeEach
	void aTeamIsOnTheIce() {
		this.day = SmallCompetition.running(this.context, 2, 3);
		this.keying = "/desk/keying/" + this.day.open(1);
		this.day.callNext(1);
	}

	@Test
	void aDifferenceBetweenTwoPeopleIsSettledWithThePaper() {
		Page first = this.screens.signedIn(Role.ACCOUNTANT);
		Page second = this.screens.signedIn(Role.REFEREE);
		Page stand = second.context().newPage();
		stand.navigate("/desk/stand/" + this.day.segment(1));
		first.navigate(this.keying + "/cards/1");
		type(first, "49", "5.1");
		first.waitForURL((url) -> url.endsWith("/cards/2"));
		type(first, "5,3", "54");
		first.waitForURL((url) -> url.endsWith("/cards/3"));
		assertThat(stand.locator("#close-missing")).containsText("Judge 2 (keyed once, by The accountant");
		assertThat(stand.locator("#paper")).containsText("second keying missing");
		second.navigate(this.keying);
		Assertions.assertThat(withoutTimes(second)).doesNotContain("4.9", "5.3");
		second.navigate(this.keying + "/cards/1");
		Assertions.assertThat(withoutTimes(second)).doesNotContain("4.9");
		type(second, "4.9", "5.1");
		second.waitForURL((url) -> url.endsWith("/cards/2"));
		assertThat(second.locator(".notice")).hasText("The card of Judge 1 is received.");
		type(second, "3.5", "5.4");
		second.waitForURL((url) -> url.endsWith("/settle"));
		assertThat(second.locator("tr.disputed")).hasCount(1);
		assertThat(second.locator("tr.disputed")).containsText("differs");
		assertThat(second.locator("[name='lines[1].typed']")).hasValue("5.4");
		Looks.expectFitsAndNoFinding(second);
		second.click("main form button[type=submit]");
		assertThat(second.locator(".summary")).containsText("The first mark must be from 0.0 to 6.0");
		second.locator(".said label").first().click();
		second.click("main form button[type=submit]");
		assertThat(second.locator(".notice")).hasText("The card of Judge 2 is settled and received.");
		assertThat(stand.locator(".seat-list li.in")).hasCount(2);
		assertThat(stand.locator(".seat-list")).containsText("5.3 / 5.4");
		Looks.expectFitsAndNoFinding(second);
	}

	@Test
	void theSubstitutesPaperIsNotTheOneOfJudge1() {
		SmallCompetition withSubstitute = SmallCompetition.running(this.context, 2, 3);
		withSubstitute.seatSubstitute();
		String desk = "/desk/keying/" + withSubstitute.open(1);
		withSubstitute.callNext(1);
		Page referee = this.screens.signedIn(Role.REFEREE);
		for (Page page : List.of(this.screens.signedIn(Role.ACCOUNTANT), referee)) {
			page.navigate(desk);
			assertThat(page.locator("thead")).containsText("S1");
			page.locator(".seat-links a").last().click();
			assertThat(page.locator("h1")).containsText("Substitute");
			type(page, "4.1", "4.2");
			assertThat(page.locator(".notice")).isVisible();
		}
		referee.navigate(desk);
		assertThat(referee.locator(".seat-links li").last()).containsText("keyed in");
		assertThat(referee.locator(".seat-links li").first()).containsText("card missing");
	}

	@Test
	void aTabletThatSpeaksMeanwhileIsShownBesideThePaper() {
		Page page = this.screens.signedIn(Role.ACCOUNTANT);
		page.navigate(this.keying + "/cards/1");
		Looks.expectFitsAndNoFinding(page);
		type(page, "5.6", "5.7");
		page.waitForURL((url) -> url.endsWith("/cards/2"));
		SeatView seat = this.day.seats().get(0);
		this.day.send(this.day.performances(1).get(0), seat, 1, new CardMarks(560, 580));
		page.navigate(this.keying);
		assertThat(page.locator(".seat-links li").first()).containsText("keyed otherwise than the tablet sent it");
		page.click("text=Settle Judge 1");
		assertThat(page.locator(".caution")).containsText("is not what the judge’s tablet sent");
		assertThat(page.locator(".said-by thead")).containsText("Judge’s tablet");
		assertThat(page.locator(".said").first()).containsText("Judge’s tablet");
		Looks.expectFitsAndNoFinding(page);
		page.fill("[name='lines[1].typed']", "58");
		page.click("main form button[type=submit]");
		assertThat(page.locator(".seat-links li").first()).containsText("received from the tablet");
	}

	/** Seconds and their parts may look like any mark. */
	private static String withoutTimes(Page page) {
		return page.content().replaceAll("datetime=\"[^\"]*\"", "");
	}

	/**
	 * Enter goes on from field to field, then to the button, which sends. Before the
	 * page's script is there it sends what is typed so far, as in any form.
	 */
	private static void type(Page page, String... typed) {
		page.waitForLoadState();
		page.locator("[name='lines[0].typed']").focus();
		for (String each : typed) {
			page.keyboard().type(each);
			page.keyboard().press("Enter");
		}
		page.keyboard().press("Enter");
	}

}
