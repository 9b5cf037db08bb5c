package rimebook;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.results.ResultPublication;
import rimebook.results.Standings;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** The results desk of ten teams, as large as the screens of the crew let it be. */
@WholeApplication
@BrowserTest
class ResultsDeskBrowserTests {

	private static final int SCREEN = 900;

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	private Page page;

	ResultsDeskBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void tenTeamsFitAScreenAndAHalfAndWhatIsFoldedOpensByKeyboard() {
		open(posted());
		assertThat(height(1440)).isLessThanOrEqualTo(1300);
		assertThat(height(390)).isLessThanOrEqualTo(2500);
		assertThat((Integer) this.page.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(390);
		aTeamsLineOpens();
		theChecksThatAreMetOpen();
	}

	private void aTeamsLineOpens() {
		Locator line = this.page.locator("table.checked tbody tr").first();
		PlaywrightAssertions.assertThat(line.locator(".why").first()).isHidden();
		line.locator("summary").press("Enter");
		PlaywrightAssertions.assertThat(line.locator(".why").first()).containsText("judges had them");
		PlaywrightAssertions.assertThat(line.locator(".why").first()).isVisible();
		PlaywrightAssertions.assertThat(line.locator(".marks span")).hasCount(7);
		PlaywrightAssertions.assertThat(line.locator(".marks")).isVisible();
	}

	/** What is still open stands there without that. */
	private void theChecksThatAreMetOpen() {
		Locator checks = this.page.locator("#checks");
		PlaywrightAssertions.assertThat(checks.getByText("The accountant has not signed yet.")).isVisible();
		Locator met = checks.locator(".check-lines.met");
		PlaywrightAssertions.assertThat(met).isHidden();
		PlaywrightAssertions.assertThat(checks.locator("summary")).hasText("6 checks are met");
		checks.locator("summary").press("Enter");
		PlaywrightAssertions.assertThat(met).isVisible();
		PlaywrightAssertions.assertThat(met.locator("li")).hasCount(6);
	}

	private SmallCompetition posted() {
		SmallCompetition day = SmallCompetition.running(this.context, 10, CompetitionFixtures.anEvent("Junior", 7));
		day.open(1);
		day.skateRest(1);
		int version = this.context.getBean(Standings.class).result(day.segment(1)).orElseThrow().version();
		this.context.getBean(ResultPublication.class).post(day.segment(1), version, SmallCompetition.ACCOUNTANT);
		return day;
	}

	private void open(SmallCompetition day) {
		this.page = this.screens.signedIn(Role.REFEREE, "/desk/results/" + day.segment(1));
	}

	private int height(int width) {
		this.page.setViewportSize(width, SCREEN);
		return (Integer) this.page.evaluate("document.documentElement.scrollHeight");
	}

}
