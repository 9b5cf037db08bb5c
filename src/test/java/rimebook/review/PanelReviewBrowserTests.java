package rimebook.review;

import com.microsoft.playwright.Page;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

/** Tables of seven columns on a phone, and what a screen reader has of them. */
@WholeApplication
@BrowserTest
class PanelReviewBrowserTests {

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	PanelReviewBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@ParameterizedTest
	@ValueSource(booleans = { true, false })
	void fitsEveryScreen(boolean byPoints) {
		SmallCompetition day = byPoints ? PointsCompetition.running(this.context, 4, 5)
				: SmallCompetition.running(this.context, 4, 5);
		day.open(1);
		day.skateRest(1);
		Page page = this.screens.signedIn(Role.REFEREE, "/desk/review/events/" + day.event().id());
		Looks.expectFitsAndNoFinding(page);
		draw(page, byPoints ? "review-points" : "review-placement");
		page.navigate("/desk/review/" + day.competition().id());
		Looks.expectFitsAndNoFinding(page);
		draw(page, byPoints ? "review-competition-points" : "review-competition-placement");
	}

	private static void draw(Page page, String name) {
		for (int width : new int[] { 390, 820, 1440 }) {
			page.setViewportSize(width, 900);
			Looks.draw(page, name + "-" + width);
		}
	}

}
