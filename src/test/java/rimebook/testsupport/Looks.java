package rimebook.testsupport;

import java.nio.file.Path;
import java.util.List;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * How pages have to look, and pictures of them for people, which are drawn into
 * {@code target/screens} when the system property {@code rimebook.screens} is
 * {@code true}.
 */
public final class Looks {

	private static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

	private static final boolean DRAWN = Boolean.getBoolean("rimebook.screens");

	private static final Path SCREENS = Path.of("target", "screens");

	private Looks() {
	}

	/** Expect that the page as it is breaks no rule of WCAG 2.2, levels A and AA. */
	public static void expectAccessible(Page page) {
		assertThat(violations(axe(page).withTags(WCAG))).as(page.url()).isEmpty();
	}

	/** Expect that the page as it is breaks no rule that axe knows. */
	public static void expectNoFinding(Page page) {
		assertThat(violations(axe(page))).as(page.url()).isEmpty();
	}

	/**
	 * Our pages have no frames, so axe needs no page of its own to read its findings; of
	 * all that breaks no rule it need not tell every element.
	 */
	private static AxeBuilder axe(Page page) {
		AxeRunOptions told = new AxeRunOptions();
		told.setResultTypes(List.of("violations"));
		return new AxeBuilder(page).setLegacyMode(true).options(told);
	}

	private static List<String> violations(AxeBuilder axe) {
		return axe.analyze()
			.getViolations()
			.stream()
			.map((rule) -> rule.getId() + " " + rule.getNodes().stream().map((node) -> node.getHtml()).toList())
			.toList();
	}

	/** Expect that windows of those widths need no scrolling sideways. */
	public static void expectFits(Page page, int... widths) {
		for (int width : widths) {
			page.setViewportSize(width, 900);
			assertThat(page.evaluate("document.documentElement.scrollWidth")).as(page.url() + " at " + width)
				.isEqualTo(width);
		}
	}

	/** Expect that a page fits desk, tablet and phones and that axe has no finding. */
	public static void expectFitsAndNoFinding(Page page) {
		expectFits(page, 1440, 820, 390, 320);
		expectNoFinding(page);
	}

	/** Draw the whole page as it is. */
	public static void draw(Page page, String name) {
		draw(page, name, true);
	}

	/** Draw what of the page is in its window. */
	public static void drawWindow(Page page, String name) {
		draw(page, name, false);
	}

	private static void draw(Page page, String name, boolean whole) {
		if (DRAWN) {
			page.screenshot(new Page.ScreenshotOptions().setPath(SCREENS.resolve(name + ".png")).setFullPage(whole));
		}
	}

}
