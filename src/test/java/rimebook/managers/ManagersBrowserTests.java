package rimebook.managers;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.entries.EntryView;
import rimebook.music.MusicDeadlines;
import rimebook.music.Tones;
import rimebook.rosters.EventEligibility;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/** A manager on a telephone completes a team. */
@WholeApplication
@BrowserTest
class ManagersBrowserTests {

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	private int touches;

	ManagersBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	/**
	 * Each press and each field that is typed into takes a person two to three seconds on
	 * a telephone; under 100 of them are under five minutes.
	 */
	@Test
	void aTeamIsCompletedOnATelephone() {
		SmallCompetition day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.aPointsEvent("Senior", 3));
		EntryView team = day.entries().get(0);
		Instant soon = Instant.now().plus(Duration.ofDays(3));
		EventEligibility eligibility = this.context.getBean(EventEligibility.class);
		eligibility.set(new EventEligibility.SetRules(day.event().id(), "", eligibility.of(day.event().id()).rules(),
				"", soon, -1), SmallCompetition.SECRETARY);
		this.context.getBean(MusicDeadlines.class).set(day.competition().id(), 0, soon, SmallCompetition.SECRETARY);
		String token = this.context.getBean(TeamsLinks.class)
			.give(day.competition().id(), team.id(), SmallCompetition.SECRETARY);
		try (Page page = this.screens.screen(390, 844)) {
			page.navigate("/manager#" + token);
			assertThat(page.locator("h1")).containsText("Team 1");
			assertThat(page.url()).endsWith("/manager");
			Looks.expectFitsAndNoFinding(page);
			page.setViewportSize(390, 844);
			long begun = System.nanoTime();
			open(page, "Roster");
			for (String given : List.of("Aila", "Birrin", "Caldis")) {
				fill(page, "givenName", given);
				fill(page, "familyName", "Hoarfrost");
				fill(page, "birthDate", "2008-03-09");
				press(page, "Put on the roster");
				assertThat(page.locator(".notice")).isVisible();
			}
			Looks.expectFitsAndNoFinding(page);
			page.setViewportSize(390, 844);
			press(page, "Aila Hoarfrost");
			page.selectOption("#printed", "yes");
			fill(page, "guardian", "Nell Thaw");
			fill(page, "on", "2026-11-01");
			Looks.expectFitsAndNoFinding(page);
			page.setViewportSize(390, 844);
			press(page, "Note it");
			open(page, "Whom to call");
			for (String kind : List.of("COACH", "EMERGENCY")) {
				page.selectOption("#kind", kind);
				fill(page, "name", "Nell Thaw");
				fill(page, "phone", "040 1234");
				press(page, "Write down");
			}
			day.event().segments().forEach((segment) -> complete(page, segment.id().toString()));
			page.navigate("/manager");
			assertThat(page.locator(".todo")).not().containsText("music");
			assertThat(page.locator(".todo")).not().containsText("Nothing is planned");
			assertThat(page.locator(".todo")).not().containsText("Nobody is known");
			Looks.draw(page, "manager");
			assertThat(this.touches).isLessThan(100);
			assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofMinutes(2));
		}
	}

	private void complete(Page page, String segment) {
		page.navigate("/manager/elements/" + segment);
		fill(page, "find", "me4");
		press(page, "Look in the table of values");
		page.locator("button[name=take]").first().click();
		assertThat(page.locator("#codes")).hasValue("ME4");
		Looks.expectFitsAndNoFinding(page);
		page.setViewportSize(390, 844);
		press(page, "Keep the plan");
		page.navigate("/manager/music/" + segment);
		page.setInputFiles("#file", new FilePayload("song.wav", "audio/wav", Tones.wav(170_000, 440)));
		press(page, "Hand it in");
		assertThat(page.locator(".notice")).containsText("handed in");
		this.touches += 4;
	}

	private void open(Page page, String part) {
		page.navigate("/manager");
		press(page, part);
		this.touches++;
	}

	private void fill(Page page, String field, String text) {
		page.fill("#" + field, text);
		this.touches++;
	}

	private void press(Page page, String words) {
		Locator button = page.locator("main")
			.locator("a, button")
			.filter(new Locator.FilterOptions().setHasText(words));
		button.first().click();
		this.touches++;
	}

}
