package rimebook.rehearsal;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ForcedColors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ActiveProfiles;

import rimebook.panels.Panels;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.shared.Actor;
import rimebook.stand.StandView;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;

import static org.assertj.core.api.Assertions.assertThat;

/** The band stays in sight and takes nothing off the pages that fill their screen. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
		properties = { "spring.datasource.url=jdbc:h2:mem:demo-panel;DB_CLOSE_DELAY=-1", "rimebook.demo.paused=true" })
@ActiveProfiles({ "demo", "rehearsal" })
@BrowserTest
class MarkedPagesBrowserTests {

	private static final Actor REFEREE = new Actor("Runa Halvard", "referee", "demo");

	private final Browsers screens;

	@Autowired
	private SimulatedPanel panel;

	@Autowired
	private KnownCodes codes;

	@Autowired
	private Panels panels;

	@Autowired
	private SegmentRun run;

	MarkedPagesBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void theCardStillFitsItsTablet() {
		StandView view = this.panel.look();
		PerformanceView next = view.next().performance();
		this.run.call(next.id(), next.version(), REFEREE);
		Page card = this.screens.joined(this.codes.orNew(this.panels.judges(view.event().id()).get(4)));
		card.locator("#keys button").first().waitFor();
		for (int[] size : new int[][] { { 820, 1180 }, { 1180, 820 }, { 1280, 800 } }) {
			card.setViewportSize(size[0], size[1]);
			assertThat(card.evaluate("document.documentElement.scrollHeight")).as(size[0] + " wide").isEqualTo(size[1]);
			Looks.drawWindow(card, "rehearsal-card-" + size[0]);
		}
		Looks.expectAccessible(card);
		this.run.takeBack(next.id(), this.run.performance(next.id()).version(), REFEREE);
	}

	@Test
	void theBoardStillFitsItsScreen() {
		Page board = this.screens.screen(1440, 900);
		board.navigate("/follow/lantern-weekend/board");
		assertThat(board.evaluate("document.documentElement.scrollHeight")).isEqualTo(900);
		assertThat(board.locator(".rehearsal-band").boundingBox().height).isLessThan(900 / 12.0);
		Looks.expectAccessible(board);
		Looks.drawWindow(board, "rehearsal-board");
	}

	@Test
	void theBandIsInSightWhereverSomebodyReads() {
		Page page = this.screens.screen(1440, 900);
		page.navigate("/sign-in");
		draw(page, "rehearsal-sign-in");
		page.locator("[name=signInName]").fill("referee");
		page.locator("[name=password]").fill("whistle-and-rule");
		page.locator("form[action='/sign-in'] button").click();
		for (String path : new String[] { "/desk", "/desk/stand/" + this.panel.look().segment().id(),
				"/follow/lantern-weekend/junior/short-programme" }) {
			page.navigate(path);
			Looks.expectAccessible(page);
			page.evaluate("window.scrollTo(0, document.body.scrollHeight)");
			BoundingBox band = page.locator(".rehearsal-band").boundingBox();
			assertThat(band.y).as(path).isZero();
			page.evaluate("window.scrollTo(0, 0)");
			draw(page, "rehearsal" + path.replaceAll("/[0-9a-f-]{36}", "").replace('/', '-'));
		}
	}

	/**
	 * Where the reader chooses the colours those of the rehearsal are gone, the word is
	 * not.
	 */
	@Test
	void theWordIsThereInForcedColours() {
		Page page = this.screens.screen(820, 900);
		page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
		for (String path : new String[] { "/sign-in", "/follow/lantern-weekend/board", "/judge" }) {
			page.navigate(path);
			Locator word = page.locator(".rehearsal-band strong");
			assertThat(word.isVisible()).as(path).isTrue();
			assertThat(word.evaluate("word => getComputedStyle(word).color")).as(path)
				.isNotEqualTo(
						word.evaluate("word => getComputedStyle(word.closest('.rehearsal-band')).backgroundColor"));
			assertThat(word.evaluate("word => getComputedStyle(word.closest('.rehearsal-band')).borderBlockStyle"))
				.as("an edge where there is no colour")
				.isEqualTo("solid");
			Looks.drawWindow(page, "rehearsal-forced-colours" + path.replace('/', '-'));
		}
	}

	private static void draw(Page page, String name) {
		for (int width : new int[] { 390, 820, 1440 }) {
			Looks.expectFits(page, width);
			Looks.drawWindow(page, name + "-" + width);
		}
	}

}
