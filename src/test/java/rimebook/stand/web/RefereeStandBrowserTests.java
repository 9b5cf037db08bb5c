package rimebook.stand.web;

import java.util.List;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

@WholeApplication
@BrowserTest
class RefereeStandBrowserTests {

	private final ApplicationContext context;

	private final SmallCompetition day;

	private final Browsers screens;

	RefereeStandBrowserTests(@Autowired ApplicationContext context, Browsers screens) {
		this.screens = screens;
		this.context = context;
		this.day = SmallCompetition.running(context, 4, 3);
	}

	@Test
	void theSeatsThatAreMissingAreListedUntilTheLastCardIsIn() {
		SegmentId segment = this.day.open(1);
		PerformanceView skating = this.day.callNext(1);
		Page stand = stand(segment);
		assertThat(stand.locator("#close-missing")).containsText("Judge 1, Judge 2, Judge 3");
		send(skating, 1);
		send(skating, 3);
		assertThat(stand.locator("#close-missing")).hasText("1 of 3 cards is missing: Judge 2");
		Looks.expectAccessible(stand);
		send(skating, 2);
		stand.click("#close-ask");
		stand.click("#close");
		assertThat(stand.locator(".notice")).hasText("The cards are closed and the standing is out.");
		Looks.expectAccessible(stand);
	}

	@Test
	void theQuestionBeforeClosingStaysOpenWhileThePartAroundItChanges() {
		SeatView substitute = this.day.seatSubstitute();
		SegmentId segment = this.day.open(1);
		PerformanceView skating = this.day.callNext(1);
		for (int judge = 1; judge <= 3; judge++) {
			send(skating, judge);
		}
		Page stand = stand(segment);
		stand.click("#close-ask");
		stand.focus("#close");
		assertThat(stand.locator("#spare-missing")).isVisible();
		this.day.send(skating, substitute, 1, new CardMarks(500, 510));
		assertThat(stand.locator("#spare-missing")).hasCount(0);
		assertThat(stand.locator("#close")).isVisible();
		assertThat(stand.locator("#close")).isFocused();
		stand.keyboard().press("Enter");
		assertThat(stand.locator(".notice")).hasText("The cards are closed and the standing is out.");
		this.day.callNext(1);
		assertThat(stand.locator("#close-missing")).isVisible();
	}

	@Test
	void aRemarkBeingTypedOutlivesArrivingCardsAndAReload() {
		SegmentId segment = this.day.open(1);
		PerformanceView skating = this.day.callNext(1);
		Page stand = stand(segment);
		stand.fill("#remark-form [name=text]", "cape lost at the red line");
		send(skating, 1);
		assertThat(stand.locator(".seat-list li.in")).hasCount(1);
		assertThat(stand.locator("#remark-form [name=text]")).hasValue("cape lost at the red line");
		stand.reload();
		assertThat(stand.locator("#remark-form [name=text]")).hasValue("cape lost at the red line");
	}

	@Test
	void whatIsRefusedIsShownAgainAsTyped() {
		SegmentId segment = this.day.open(1);
		this.day.callNext(1);
		Page stand = stand(segment);
		stand.click("#end summary");
		stand.fill("#end [name=reason]", "two skaters hurt");
		stand.click("#end button[type=submit]");
		assertThat(stand.locator("#end .fault").first()).containsText("Please choose how it ended.");
		assertThat(stand.locator("#end [name=reason]")).hasValue("two skaters hurt");
		Looks.expectAccessible(stand);
	}

	@Test
	void beforeOpeningItListsWhatIsMissing() {
		Page stand = stand(this.day.segment(1));
		assertThat(stand.locator(".steps")).containsText("Nothing is drawn for this segment yet.");
		Looks.expectAccessible(stand);
	}

	@Test
	void theWayToTheResultStandsClearOfTheLastPlace() {
		SegmentId segment = this.day.open(1);
		this.day.skateNext(1);
		Page stand = stand(segment);
		for (int width : List.of(1440, 820, 390)) {
			stand.setViewportSize(width, 900);
			Number gap = (Number) stand
				.evaluate("document.querySelector('#standing-now .small').getBoundingClientRect().top"
						+ " - document.querySelector('#standing-now ol').getBoundingClientRect().bottom");
			assertThat(gap.doubleValue()).as("at " + width).isBetween(11.9, 24.1);
		}
	}

	@Test
	void theSheetFollowsTheIceAndFitsAPhone() {
		SegmentId segment = this.day.open(1);
		Page sheet = this.screens.signedIn(Role.ANNOUNCER);
		sheet.setViewportSize(390, 844);
		sheet.navigate("/desk/sheet/" + segment);
		assertThat(sheet.locator("li.now")).hasCount(0);
		sheet.evaluate("document.getElementById('intro-2').open = true");
		sheet.evaluate("document.getElementById('intro-2').scrollIntoView({ block: 'center', behavior: 'instant' })");
		double top = top(sheet, "#intro-2");
		this.day.callNext(1);
		assertThat(sheet.locator("li.now .number")).hasText("1");
		assertThat(sheet.locator("#intro-2")).hasAttribute("open", "");
		assertThat(top(sheet, "#intro-2")).isCloseTo(top, within(1.5));
		assertThat((Integer) sheet.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(390);
		Looks.expectAccessible(sheet);
	}

	private static double top(Page page, String selector) {
		return page.locator(selector).boundingBox().y;
	}

	private Page stand(SegmentId segment) {
		return this.screens.signedIn(Role.REFEREE, "/desk/stand/" + segment);
	}

	private void send(PerformanceView performance, int judge) {
		this.day.send(performance, this.day.seats().get(judge - 1), 1, new CardMarks(500, 510));
	}

}
