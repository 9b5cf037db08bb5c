package rimebook;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.SelectOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;

import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Crew;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * From nothing, a service that was started for the first time, to the first team on the
 * ice as one person clicks it. Every click is written down: one to go into a field unless
 * the page has put the cursor there, one on a link or button, two for a choice from a
 * list.
 */
@ExtendWith(OutputCaptureExtension.class)
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = "spring.datasource.url=jdbc:h2:mem:nothing;LOCK_TIMEOUT=10000;DB_CLOSE_DELAY=-1")
@BrowserTest
class FirstTeamOnIceBrowserTests {

	private static final int MOST = 60;

	private static final int JUDGES = 7;

	private final Browsers screens;

	private final List<String> clicks = new ArrayList<>();

	private final String unique = UUID.randomUUID().toString().substring(0, 8);

	private Page page;

	FirstTeamOnIceBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void takesAtMostSixtyClicks(CapturedOutput output) {
		makeTheFirstAdministrator(output.getOut());
		writeDownCompetitionAndEvent();
		enterTeams();
		registerOfficials();
		startTheCompetition();
		draw();
		seatThePanel();
		callTheFirstTeam();
		System.out.println("From nothing to the first team on the ice: " + this.clicks.size() + " clicks");
		assertThat(this.clicks).as(String.join("\n", this.clicks)).hasSizeLessThanOrEqualTo(MOST);
	}

	/** With the link that the service prints when it starts. */
	private void makeTheFirstAdministrator(String printed) {
		Matcher link = Pattern.compile("/set-up/[\\w-]+").matcher(printed);
		assertThat(link.find()).as("a link in " + printed).isTrue();
		this.page = this.screens.screen(1280, 720);
		this.page.navigate(link.group());
		type("#signInName", "first");
		type("#displayName", "Ada Quill");
		type("#password", Crew.PASSWORD);
		click("main form button.main");
		PlaywrightAssertions.assertThat(this.page.locator("#signInName")).hasValue("first");
		type("#password", Crew.PASSWORD);
		click("main form button");
		this.page.waitForURL("**/desk");
	}

	private void writeDownCompetitionAndEvent() {
		click("main a[href='/desk/competitions']");
		click("main a[href$='/competitions/new']");
		type("#name", "Lanternlight " + this.unique);
		type("#place", "Ebbhaven");
		type("#rulebook", "Rulebook of the house");
		click("main form button.main");
		click("main a[href$='/events/new']");
		type("#name", "Junior");
		click("main form button.main");
		click(".trail a:last-child");
	}

	private void enterTeams() {
		move("ENTRIES_OPEN");
		click("main a[href*='/desk/entries/import/']");
		type("#csv", "category;club;city;team\nJunior;North Quay;Ebbhaven;Pale Thaw " + this.unique
				+ "\nJunior;Beacon;Skerrywick;Embers " + this.unique);
		click("main form button.main");
		click("main form button.main");
	}

	private void registerOfficials() {
		click("a[href='/desk']");
		click("main a[href='/desk/officials']");
		click("main a[href='/desk/officials/import']");
		type("#csv", "judge;club;level\n"
				+ officials().stream().map((name) -> name + ";;national").collect(Collectors.joining("\n")));
		click("main form button.main");
		click("main form button.main");
		PlaywrightAssertions.assertThat(this.page.locator("main")).containsText(officials().get(JUDGES));
	}

	private List<String> officials() {
		return IntStream.rangeClosed(0, JUDGES).mapToObj((number) -> "Official " + number + " " + this.unique).toList();
	}

	private void startTheCompetition() {
		click("a[href='/desk/competitions']");
		click("main a:text('Lanternlight " + this.unique + "')");
		move("ENTRIES_CLOSED");
		move("RUNNING");
	}

	private void draw() {
		click("main a:text-is('Junior')");
		click("main a[href^='/desk/draw/'] >> nth=0");
		click("main form button.main");
		PlaywrightAssertions.assertThat(this.page.locator("main")).containsText("Pale Thaw " + this.unique);
		click(".trail a:text-is('Junior')");
	}

	private void seatThePanel() {
		click("main a[href^='/desk/panel/'] >> nth=0");
		choose("referee-1", officials().get(0));
		IntStream.rangeClosed(1, JUDGES).forEach((judge) -> choose("judge-" + judge, officials().get(judge)));
		click("button[form=seating]");
		PlaywrightAssertions.assertThat(this.page.locator("main .state.signed")).isVisible();
		click(".trail a:text-is('Junior')");
	}

	private void callTheFirstTeam() {
		click("main a[href^='/desk/stand/'] >> nth=0");
		click("form[action$='/open'] button");
		click("form[action$='/call'] button");
		PlaywrightAssertions.assertThat(this.page.locator(".clock, #clock").first()).isVisible();
	}

	private void move(String state) {
		click("main a[href*='next=" + state + "']");
		click("main form button.main");
	}

	private void click(String selector) {
		this.clicks.add(this.page.title() + ": " + selector);
		this.page.evaluate("document.documentElement.dataset.before = ''");
		assertThat(this.page.locator(selector).count()).as(() -> selector + " in " + this.page.innerText("main"))
			.isPositive();
		this.page.locator(selector).first().click();
		this.page.locator("html:not([data-before])").waitFor();
		this.page.waitForLoadState();
	}

	private void type(String selector, String text) {
		if (!(boolean) this.page.evaluate("(place) => document.activeElement.matches(place)", selector)) {
			this.clicks.add(this.page.title() + ": into " + selector);
		}
		this.page.fill(selector, text);
	}

	private void choose(String place, String official) {
		this.clicks.add(this.page.title() + ": list of " + place);
		this.clicks.add(this.page.title() + ": " + official);
		this.page.selectOption("select[name='official[" + place + "]']",
				new SelectOption().setLabel(official + ", national"));
	}

}
