package rimebook.tablets;

import java.util.List;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ForcedColors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionFixtures;
import rimebook.panels.Panels;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.CalledElements;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.JudgeCard.expectMarking;

/**
 * A judge who has told the tablet to write at 200 % (WCAG 2.2, 1.4.4) or to use a few
 * colours of its own. The card is then longer than the screen; nothing stands beside it.
 */
@WholeApplication
@BrowserTest
class LargeTextOnTabletsBrowserTests {

	private static final int TWICE = 32;

	@Autowired
	private ApplicationContext context;

	private final Browsers tablets;

	LargeTextOnTabletsBrowserTests(Browsers tablets) {
		this.tablets = tablets;
	}

	@Test
	void everyKeyOfBothCardsIsReachedDownwards() {
		Browsers large = this.tablets.writing(TWICE);
		for (String code : List.of(twoMarks(), points())) {
			Page card = large.joined(code);
			expectMarking(card);
			assertThat(card.evaluate("getComputedStyle(document.documentElement).fontSize")).isEqualTo("32px");
			for (int[] size : new int[][] { { 390, 844 }, { 768, 1024 }, { 1280, 800 } }) {
				card.setViewportSize(size[0], size[1]);
				shoot(card, "twice-" + size[0]);
				assertThat(card.evaluate("document.documentElement.scrollWidth")).isEqualTo(size[0]);
				expectReachable(card);
			}
		}
	}

	private static void expectReachable(Page card) {
		for (Locator key : card.locator("button:visible:not(:disabled)").all()) {
			assertThat(key.evaluate("""
					(key) => {
						key.scrollIntoView({ block: "center", behavior: "instant" });
						const box = key.getBoundingClientRect();
						const at = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
						return key.contains(at) ? "" : (at?.outerHTML ?? "nothing").slice(0, 80);
					}""")).as("what covers " + key.textContent()).isEqualTo("");
		}
	}

	/**
	 * What was chosen, and what is being marked, is told by more than a colour of ours.
	 */
	@Test
	void fewColoursTellWhatIsChosen() {
		for (String code : List.of(twoMarks(), points())) {
			Page card = this.tablets.joined(code);
			card.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
			expectMarking(card);
			shoot(card, "forced");
			assertThat(card.locator("[aria-pressed=true]:visible").all()).isNotEmpty().allSatisfy((chosen) -> {
				assertThat(chosen.evaluate("(key) => getComputedStyle(key).outlineStyle")).isEqualTo("solid");
				assertThat(chosen.evaluate("(key) => getComputedStyle(key).outlineWidth")).isEqualTo("3px");
			});
			assertThat(card.locator("[aria-pressed=false]:visible")
				.first()
				.evaluate("(key) => getComputedStyle(key).outlineStyle")).isEqualTo("none");
		}
	}

	private String twoMarks() {
		return code(SmallCompetition.running(this.context, 2, 3));
	}

	private String points() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, CompetitionFixtures.aPointsEvent("Senior", 3));
		String code = code(day);
		new CalledElements(this.context, day.performances(1).get(0)).call("I4+pi3", "ME4", "NHE3+s4", "TwE3");
		return code;
	}

	private String code(SmallCompetition day) {
		this.context.getBean(Panels.class).issueCodes(day.event().id(), SmallCompetition.REFEREE);
		day.open(1);
		day.callNext(1);
		return day.seats().get(0).code();
	}

	private static void shoot(Page card, String suffix) {
		boolean points = card.locator("#elements").count() > 0;
		Looks.draw(card, (points ? "points-card-" : "card-") + suffix);
	}

}
