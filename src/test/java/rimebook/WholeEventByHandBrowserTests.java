package rimebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.panels.DraftOfficial;
import rimebook.panels.Panels;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * One event by hand in real browsers: the crew at their desks, five judges on tablets and
 * a spectator whose page moves without reloading. On each page axe finds no violation of
 * WCAG 2.2 A or AA; each is drawn at three widths into {@code target/screens}.
 */
@WholeApplication
@BrowserTest
class WholeEventByHandBrowserTests {

	private static final int JUDGES = 5;

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	private CompetitionView competition;

	private EventView event;

	private String segment;

	private String refereeName;

	private String accountantName;

	WholeEventByHandBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@BeforeEach
	void planACompetition() {
		this.refereeName = Crew.add(this.context, Role.REFEREE);
		this.accountantName = Crew.add(this.context, Role.ACCOUNTANT);
		Competitions competitions = this.context.getBean(Competitions.class);
		this.competition = competitions.create(CompetitionFixtures.aCompetition("Glimmer Days " + UUID.randomUUID()),
				SmallCompetition.SECRETARY);
		this.event = competitions.addEvent(this.competition.id(),
				new DraftEvent("Novice", DraftEvent.Judging.by(JudgingMethod.MAJORITY, JUDGES),
						List.of(CompetitionFixtures.aFree()))
					.signedAtOnce(),
				SmallCompetition.SECRETARY);
		this.segment = this.event.segments().get(0).id().toString();
		competitions.move(this.competition.id(), competitions.competition(this.competition.id()).version(),
				CompetitionState.ENTRIES_OPEN, SmallCompetition.SECRETARY);
	}

	@Test
	void carriesAnEventFromEntryToSignatures() {
		Page secretary = signIn(Crew.add(this.context, Role.SECRETARY));
		enterTeams(secretary, "Thimble", "Goat Path");
		Page referee = signIn(this.refereeName);
		draw(referee);
		List<String> codes = seatThePanel(referee);
		List<Page> tablets = codes.stream().map(this::join).toList();
		open(referee, "/desk/stand/" + this.segment, "stand-before");
		press(referee, "form[action$='/open'] button");
		Page spectator = this.screens.screen(1280, 720);
		open(spectator, "/follow/" + this.competition.slug() + "/novice/free-skating", "standing-before");
		spectator.evaluate("window.neverReloaded = true");
		skate(referee, tablets, "50", spectator, 1);
		skate(referee, tablets, "40", spectator, 2);
		assertThat(spectator.evaluate("window.neverReloaded")).isEqualTo(true);
		spectator.locator(".standing details summary, details summary").first().click();
		show(spectator, "standing");
		Page accountant = signIn(this.accountantName);
		correct(accountant, referee, spectator);
		sign(accountant, referee, spectator);
		compareWhatWasSeen(referee, spectator, tablets.get(0));
	}

	private void enterTeams(Page secretary, String... teams) {
		open(secretary, "/desk/competitions", "competitions");
		open(secretary, "/desk/competitions/" + this.competition.id(), "competition");
		for (String team : teams) {
			open(secretary, "/desk/entries/" + this.event.id(), "entries");
			secretary.fill("[name=team]", team);
			secretary.fill("[name=club]", "Club of " + team + " " + this.event.id());
			secretary.fill("[name=town]", "Fjellby");
			secretary.locator("[name=team]").press("Enter");
			PlaywrightAssertions.assertThat(secretary.locator("main")).containsText(team);
		}
		for (String state : List.of("ENTRIES_CLOSED", "RUNNING")) {
			secretary.navigate("/desk/competitions/" + this.competition.id());
			press(secretary, "a[href*='next=" + state + "']");
			show(secretary, "move-" + state);
			press(secretary, "main form button.main");
		}
	}

	private void draw(Page referee) {
		open(referee, "/desk/draw/" + this.segment, "draw-before");
		referee.fill("[name=seed]", "glimmer");
		referee.locator("[name=seed]").press("Enter");
		PlaywrightAssertions.assertThat(referee.locator("main")).containsText("Goat Path");
		show(referee, "draw");
	}

	private List<String> seatThePanel(Page referee) {
		Panels panels = this.context.getBean(Panels.class);
		List<String> places = new ArrayList<>(List.of("referee-1", "accountant-1"));
		for (int judge = 1; judge <= JUDGES; judge++) {
			places.add("judge-" + judge);
		}
		for (String place : places) {
			String official = panels
				.register(new DraftOfficial(official(place), "", "national"), SmallCompetition.REFEREE)
				.id()
				.toString();
			referee.navigate("/desk/panel/" + this.event.id());
			referee.selectOption("[name='official[" + place + "]']", official);
			press(referee, "button[form=seating]");
		}
		press(referee, "form[action$='/codes'] button");
		show(referee, "panel");
		open(referee, "/desk/panel/" + this.event.id() + "/slips", "slips");
		return referee.locator(".slip-code").allTextContents();
	}

	/** Those who sign sit under the names of their accounts. */
	private String official(String place) {
		return switch (place) {
			case "referee-1" -> Crew.displayName(this.refereeName);
			case "accountant-1" -> Crew.displayName(this.accountantName);
			default -> "Official " + place + " " + UUID.randomUUID();
		};
	}

	private Page join(String code) {
		Page tablet = this.screens.screen(768, 1024);
		tablet.navigate("/judge");
		tablet.fill("[name=code]", code);
		tablet.locator("[name=code]").press("Enter");
		tablet.waitForURL("**/judge/card");
		return tablet;
	}

	private void skate(Page referee, List<Page> tablets, String mark, Page spectator, int skated) {
		referee.navigate("/desk/stand/" + this.segment);
		press(referee, "form[action$='/call'] button");
		for (Page tablet : tablets) {
			PlaywrightAssertions.assertThat(tablet.locator("#number")).hasText(String.valueOf(skated));
			tablet.keyboard().type(mark + mark);
			tablet.locator("#send").click();
			PlaywrightAssertions.assertThat(tablet.locator("#truth")).containsText("eceived");
		}
		show(tablets.get(0), "card-" + skated);
		PlaywrightAssertions.assertThat(referee.locator(".seat-list li.in")).hasCount(JUDGES);
		show(referee, "stand-" + skated);
		referee.navigate("/desk/stand/" + this.segment);
		referee.locator("#close-ask").click();
		press(referee, "form[action$='/close'] button");
		PlaywrightAssertions.assertThat(spectator.locator("main")).containsText("ersion " + skated);
	}

	private void correct(Page accountant, Page referee, Page spectator) {
		String path = "/desk/protests/" + this.segment;
		open(accountant, path + "/corrections/new", "propose");
		accountant.selectOption("[name=seat]", new SelectOption().setIndex(0));
		accountant.fill("[name=first]", "5.9");
		accountant.fill("[name=second]", "5.9");
		accountant.fill("[name=reason]", "Judge 1 typed 5.0 for 5.9 and says so.");
		press(accountant, "main form button.main");
		open(referee, path, "protests");
		referee.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Judge 1")).click();
		show(referee, "correction");
		press(referee, "main form button.main");
		PlaywrightAssertions.assertThat(spectator.locator("main")).containsText("ersion 3");
	}

	private void sign(Page accountant, Page referee, Page spectator) {
		String path = "/desk/results/" + this.segment;
		open(accountant, path, "results");
		press(accountant, "form[action$='/posting'] button");
		sign(referee, path, "REFEREE");
		sign(accountant, path, "ACCOUNTANT");
		show(accountant, "results-signed");
		PlaywrightAssertions.assertThat(spectator.locator("main")).containsText("Official");
		open(referee, "/desk/record", "record");
	}

	/** The spectator's browser and the tablets are witnesses of the record. */
	private void compareWhatWasSeen(Page referee, Page spectator, Page tablet) {
		open(spectator, "/follow/" + this.competition.slug() + "/board", "board");
		open(spectator, "/record-seen", "record-seen");
		List<String> seen = spectator.locator("#seen-lines").textContent().lines().toList();
		assertThat(seen).as("a version for each team, the correction, the signatures").hasSizeGreaterThan(3);
		tablet.navigate("/record-seen");
		PlaywrightAssertions.assertThat(tablet.locator("#seen-lines")).containsText("seen 20");
		open(referee, "/desk/record/anchors", "anchors-before");
		PlaywrightAssertions.assertThat(referee.locator("main")).containsText("Tablet of Judge 1, Novice");
		referee.fill("#brought", String.join("\n", seen));
		press(referee, "main form button");
		PlaywrightAssertions.assertThat(referee.locator("main [role=status]"))
			.containsText(seen.size() + " anchors fit");
		show(referee, "anchors");
	}

	private void sign(Page signatory, String path, String as) {
		signatory.navigate(path);
		press(signatory, "a[href*='signatory=" + as + "']");
		signatory.fill("#password", Crew.PASSWORD);
		show(signatory, "signature");
		press(signatory, "main form button.main");
	}

	private Page signIn(String name) {
		Page page = this.screens.screen(1280, 720);
		page.navigate("/sign-in");
		page.fill("#signInName", name);
		page.fill("#password", Crew.PASSWORD);
		page.locator("#password").press("Enter");
		page.waitForURL("**/desk");
		return page;
	}

	private void press(Page page, String selector) {
		page.locator(selector).first().click();
		page.waitForLoadState();
	}

	private void open(Page page, String path, String name) {
		page.navigate(path);
		show(page, name);
	}

	/** Let axe read the page, then draw it as phone, tablet and desktop show it. */
	private void show(Page page, String name) {
		Looks.expectAccessible(page);
		var size = page.viewportSize();
		for (int width : new int[] { 390, 820, 1440 }) {
			page.setViewportSize(width, 900);
			assertThat((Integer) page.evaluate("document.documentElement.scrollWidth")).as("%s at %d", name, width)
				.isLessThanOrEqualTo(width);
			Looks.draw(page, name + "-" + width);
		}
		page.setViewportSize(size.width, size.height);
	}

}
