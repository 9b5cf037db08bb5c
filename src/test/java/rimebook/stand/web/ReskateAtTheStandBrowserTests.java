package rimebook.stand.web;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.clock.InterruptionCause;
import rimebook.clock.PerformanceClock;
import rimebook.competition.SegmentId;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.performances.Reskates;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.Looks;
import rimebook.testsupport.PointsCompetition;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

/**
 * What the stand, the tablets, the technical desk and the announcer see of a programme
 * that is skated again; each is drawn into {@code target/screens}.
 */
@WholeApplication
@BrowserTest
class ReskateAtTheStandBrowserTests {

	@Autowired
	private ApplicationContext context;

	private final Browsers screens;

	ReskateAtTheStandBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void everyOpenScreenFollowsAReskateThatWaitsWhileOthersSkate() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, 3);
		SegmentId segment = day.open(1);
		PerformanceView first = day.callNext(1);
		day.sendAll(first);
		Page tablet = this.screens.joined(code(day.seats().get(1)));
		Page sheet = this.screens.signedIn(Role.ANNOUNCER, "/desk/sheet/" + segment);
		interrupt(first);
		Page stand = this.screens.signedIn(Role.REFEREE, "/desk/stand/" + segment);
		stand.click("summary:has-text('Skate again from the beginning')");
		stand.check("[name=marking][value=RESKATED_ONLY]");
		stand.click("form[action$='/clock/reskate'] button[type=submit]");
		assertThat(stand.locator("#set-aside")).containsText("Judge 2: ");
		assertThat(stand.locator("#close-missing")).containsText("3 of 3 cards are missing");
		assertThat(tablet.locator("#remarks")).containsText("mark only the re-skated programme");
		draw(stand, "reskate-stand", 1440, 1024);
		draw(tablet, "reskate-tablet", 768);
		stand.click("a[href='#let-wait']");
		stand.fill("#waitReason", "A rest after the fall");
		stand.click("#let-wait button[type=submit]");
		assertThat(stand.locator("#order li").first()).containsText("A rest after the fall");
		draw(stand, "reskate-waits-stand", 1440, 1024);
		stand.click("#call-3");
		stand.fill("#callReason", "No. 2 waits for its bus");
		Looks.expectAccessible(stand);
		draw(stand, "call-other-stand", 1440, 1024);
		stand.click("#call-other button[type=submit]");
		assertThat(stand.locator("#order li").last()).containsText("No. 2 waits for its bus");
		assertThat(tablet.locator("#number")).hasText("3");
		assertThat(sheet.locator("li.now .number")).hasText("3");
		draw(stand, "called-out-of-order-stand", 1440, 1024);
		draw(tablet, "called-out-of-order-tablet", 768);
		Looks.expectAccessible(stand);
	}

	@Test
	void technicalDeskBeginsAnEmptyListForTheReskate() {
		SmallCompetition day = PointsCompetition.running(this.context, 2, 3);
		SegmentId segment = day.open(1);
		PerformanceView first = day.callNext(1);
		new CalledElements(this.context, first).call("I4+pi3", "ME4");
		Page desk = this.screens.signedIn(Role.TECHNICAL, "/desk/technical/" + segment);
		desk.setViewportSize(1280, 800);
		assertThat(desk.locator("#called .row")).hasCount(2);
		interrupt(first);
		this.context.getBean(PerformanceClock.class)
			.reskate(first.id(), 2, Reskates.Marking.RESKATED_ONLY, SmallCompetition.REFEREE);
		assertThat(desk.locator("#called .row")).hasCount(0);
		draw(desk, "reskate-technical", 1280);
		Looks.expectAccessible(desk);
	}

	private void interrupt(PerformanceView performance) {
		PerformanceClock clock = this.context.getBean(PerformanceClock.class);
		clock.start(performance.id(), 0, SmallCompetition.REFEREE);
		clock.interrupt(performance.id(), 1, InterruptionCause.RINK, SmallCompetition.REFEREE);
	}

	private String code(SeatView seat) {
		return this.context.getBean(Panels.class).issueCode(seat.id(), SmallCompetition.REFEREE).code();
	}

	private static void draw(Page page, String name, int... widths) {
		for (int width : widths) {
			page.setViewportSize(width, (width == 768) ? 1024 : 800);
			if (width == 768) {
				Looks.drawWindow(page, name + "-" + width);
			}
			else {
				Looks.draw(page, name + "-" + width);
			}
		}
	}

}
