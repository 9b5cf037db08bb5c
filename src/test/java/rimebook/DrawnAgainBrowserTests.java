package rimebook;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.SegmentId;
import rimebook.draw.DrawMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.panels.Panels;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * An open segment is drawn again with a team that came late, and every screen that is
 * open then comes to name it first, without being asked again and without a fault.
 */
@WholeApplication
@BrowserTest
class DrawnAgainBrowserTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private StartingOrderDraw draw;

	private final Browsers browsers;

	private final Screens screens;

	private final String late = "Late Lights " + UUID.randomUUID().toString().substring(0, 8);

	private SmallCompetition day;

	DrawnAgainBrowserTests(Browsers browsers) {
		this.browsers = browsers;
		this.screens = new Screens(browsers);
	}

	@Test
	void everyOpenScreenNamesTheTeamThatIsFirstNow() {
		this.day = SmallCompetition.running(this.context, 4, CompetitionFixtures.anEvent("Junior", 3));
		SegmentId segment = this.day.open(1);
		this.context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		String follow = "/follow/" + this.day.competition().slug();
		String pages = follow + "/" + this.day.event().slug() + "/" + this.day.event().segments().get(0).slug();
		Page stand = this.browsers.signedIn(Role.REFEREE, "/desk/stand/" + segment);
		this.screens.kept("stand", stand, "main");
		this.screens.kept("sheet", this.browsers.signedIn(Role.ANNOUNCER, "/desk/sheet/" + segment), "main");
		Page music = this.browsers.signedIn(Role.SECRETARY, "/desk/music/desk/" + segment);
		this.screens.tablet("tablet", this.day.seats().get(0).code(), "main");
		this.screens.open("segment", pages, "main");
		this.screens.open("order", pages + "/order", "main");
		this.screens.open("board", follow + "/board", "main");
		this.screens.open("competition", follow, "main");
		EntryId entry = enter();
		Page choice = this.browsers.signedIn(Role.REFEREE, "/desk/draw/" + segment);
		choice.click("details.again summary");
		PlaywrightAssertions.assertThat(choice.locator("details.again .caution")).containsText("The segment is open.");
		Looks.draw(choice, "drawn-again-choice");
		drawUntilFirst(segment, entry);
		for (String screen : List.of("stand", "sheet", "segment", "board", "competition")) {
			this.screens.expect(screen, this.late);
		}
		PlaywrightAssertions.assertThat(stand.locator("#end summary")).containsText(this.late);
		music.reload();
		PlaywrightAssertions.assertThat(music.locator("main")).containsText(this.late);
		Looks.draw(stand, "drawn-again-stand");
		stand.click("form[action$='/call'] button");
		PlaywrightAssertions.assertThat(stand.locator("#ice, .ice").first()).containsText(this.late);
		this.screens.expect("tablet", this.late);
		assertThat(this.day.performances(1).get(0).entry()).isEqualTo(entry);
		assertThat(this.day.performances(1).get(0).isOnIce()).isTrue();
		assertThat(this.browsers.complaints()).isEmpty();
	}

	private EntryId enter() {
		return this.context.getBean(Entries.class)
			.enter(new EnterTeam(this.day.event().id(), "Club of " + this.late, "Skerrywick", this.late, "",
					"Forgotten by the office."), SmallCompetition.SECRETARY)
			.id();
	}

	/** The first of five; who draws often enough finds it. */
	private void drawUntilFirst(SegmentId segment, EntryId entry) {
		IntStream.range(0, 100)
			.mapToObj((seed) -> this.draw.draw(new StartingOrderDraw.Order(segment, DrawMethod.WHOLE_FIELD,
					"seed " + seed, 4, "A team came late."), SmallCompetition.REFEREE))
			.filter((order) -> order.starts().get(0).entry().equals(entry))
			.findFirst()
			.orElseThrow();
	}

}
