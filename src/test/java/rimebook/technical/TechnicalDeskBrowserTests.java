package rimebook.technical;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.WaitUntilState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.entries.EntryView;
import rimebook.entries.PlannedElements;
import rimebook.panels.Panels;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.points.CalledElement;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.TechnicalDesk;
import rimebook.tabulation.points.JudgedElement;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/** Technical specialist and data operator at their desks, by keyboard and by touch. */
@WholeApplication
@BrowserTest
class TechnicalDeskBrowserTests {

	private final ApplicationContext context;

	private final SmallCompetition day;

	private final Browsers screens;

	private PerformanceView skating;

	TechnicalDeskBrowserTests(@Autowired ApplicationContext context, Browsers screens) {
		this.screens = screens;
		this.context = context;
		this.day = SmallCompetition.running(context, 2, CompetitionFixtures.aPointsEvent("Senior", 3));
	}

	@BeforeEach
	void aTeamSkates() {
		if (this.skating == null) {
			for (EntryView entry : this.day.entries()) {
				this.context.getBean(PlannedElements.class)
					.plan(new PlannedElements.PlanElements(entry.id(), this.day.segment(1),
							"I4+pi3 ME4 TwE3 NHE3+s4 AC2", -1), SmallCompetition.SECRETARY);
			}
			this.day.open(1);
			this.skating = this.day.callNext(1);
		}
	}

	@Test
	void aWholeListIsCalledChangedReadBackAndAuthorisedByKeyboardAlone() {
		Page desk = desk(1440, 900);
		assertThat(desk.locator("#code")).isFocused();
		key(desk, "Enter");
		expectCodes(desk, "I4+pi3");
		type(desk, "me3");
		expectCodes(desk, "I4+pi3", "ME3");
		desk.keyboard().type("twizz 3");
		key(desk, "ArrowDown", "Enter");
		desk.keyboard().type("inter");
		assertThat(desk.locator("#codes [role=option]:visible")).hasCount(8);
		Looks.expectAccessible(desk);
		key(desk, "ArrowDown", "ArrowUp", "Escape", "Enter");
		expectCodes(desk, "I4+pi3", "ME3", "TwE3", "NHE3+s4");
		assertThat(desk.locator("#plan .passed")).hasCount(0);

		key(desk, "ArrowUp", "ArrowUp", "ArrowUp", "4");
		expectCodes(desk, "I4+pi3", "ME4", "TwE3", "NHE3+s4");
		key(desk, "d");
		expectCodes(desk, "I4+pi3", "ME4<", "TwE3", "NHE3+s4");
		key(desk, "i");
		assertThat(desk.locator("#find-mode")).hasText("Insert before 2 ME4<");
		type(desk, "gl2");
		expectCodes(desk, "I4+pi3", "GL2", "ME4<", "TwE3", "NHE3+s4");
		assertThat(desk.locator(".row[aria-current]")).containsText("ME4<");
		key(desk, "e");
		expectCodes(desk, "I4+pi3", "ME4<", "GL2", "TwE3", "NHE3+s4");
		key(desk, "ArrowDown", "Delete");
		expectCodes(desk, "I4+pi3", "ME4<", "TwE3", "NHE3+s4");
		key(desk, "u");
		expectCodes(desk, "I4+pi3", "ME4<", "GL2", "TwE3", "NHE3+s4");
		key(desk, "u", "ArrowUp", "ArrowUp", "ArrowUp", "Shift+4");
		expectCodes(desk, "I4+pi4", "ME4<", "TwE3", "NHE3+s4");
		key(desk, "ArrowDown", "c");
		type(desk, "ME2");
		expectCodes(desk, "I4+pi4", "ME2", "TwE3", "NHE3+s4");
		key(desk, "ArrowDown", "x", "f", "r");
		assertThat(desk.locator("#called li.review.void code")).hasText("TwE3");
		assertThat(desk.locator("#deducted")).containsText("Fall: -1.00");
		key(desk, "Shift+f");
		assertThat(desk.locator("#deducted")).containsText("Fall: -2.00 (2)");
		Looks.expectAccessible(desk);

		key(desk, "g");
		desk.waitForURL("**/read-back");
		desk.locator("#authorise").focus();
		key(desk, "Enter");
		assertThat(desk.locator(".summary")).containsText("Still under review: element 3 (TwE3).");
		Looks.expectAccessible(desk);
		desk.locator("main .actions a").focus();
		key(desk, "Enter");
		assertThat(desk.locator("#code")).isFocused();
		key(desk, "ArrowUp", "ArrowUp", "r");
		assertThat(desk.locator("#called li.review")).hasCount(0);
		key(desk, "g");
		desk.waitForURL("**/read-back");
		desk.locator("#authorise").focus();
		key(desk, "Enter");
		assertThat(desk.locator(".notice")).hasText("The list of elements is authorised.");
		assertThat(desk.locator("#called .state.signed")).containsText("authorised by The technical-");
		assertThat(this.context.getBean(ListAuthorisations.class).ofPerformance(this.skating.id())).isPresent();

		type(desk, "ac2");
		assertThat(desk.locator("#called .state.signed")).hasCount(0);
		assertThat(this.context.getBean(ListAuthorisations.class).ofPerformance(this.skating.id())).isEmpty();
	}

	@Test
	void theFieldTakesNoKeyBeforeTheScriptListens() {
		Page desk = this.screens.signedIn(Role.TECHNICAL);
		List<Route> held = new CopyOnWriteArrayList<>();
		desk.route("**/js/technical/desk.js", held::add);
		desk.navigate("/desk/technical/" + this.day.segment(1),
				new Page.NavigateOptions().setWaitUntil(WaitUntilState.COMMIT));
		assertThat(desk.locator("#code")).isDisabled();
		desk.keyboard().type("me3");
		desk.waitForCondition(() -> !held.isEmpty());
		held.get(0).resume();
		assertThat(desk.locator("#code")).isFocused();
		assertThat(desk.locator("#code")).hasValue("");
		type(desk, "me3");
		expectCodes(desk, "ME3");
	}

	@Test
	void twoDesksFollowEachOtherAndAConflictLosesNothing() {
		Page one = desk(1024, 768);
		Page two = desk(1024, 768);
		type(one, "ME4");
		assertThat(two.locator("#called code")).hasText("ME4");
		two.locator("#code").pressSequentially("twe");
		type(one, "AC2");
		expectCodes(two, "ME4", "AC2");
		assertThat(two.locator("#code")).hasValue("twe");
		assertThat(two.locator("#code")).isFocused();

		two.route("**/live?*", (route) -> route.abort());
		type(one, "GL3");
		two.waitForCondition(() -> calls().size() == 3);
		key(two, "Backspace", "Backspace", "Backspace");
		type(two, "TwE3");
		assertThat(two.locator("#refused")).containsText("GL3 called as element 3");
		assertThat(two.locator("#refused .own")).hasText("Call an element TwE3");
		assertThat(two.locator("#refused button.now")).isFocused();
		Looks.expectAccessible(two);
		key(two, "Enter");
		expectCodes(two, "ME4", "AC2", "GL3", "TwE3");
		assertThat(two.locator("#refused")).isHidden();
		expectCodes(one, "ME4", "AC2", "GL3", "TwE3");
	}

	@Test
	void aJudgeSeesEachCallOnTheTabletWithinASecondOrSo() {
		this.context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		Page tablet = this.screens.joined(this.day.seats().get(0).code());
		Page desk = desk(1024, 768);
		List<Long> waited = new ArrayList<>();
		for (String code : List.of("GL1", "PB2", "Mi1", "AC1", "Pa3", "W2", "B1", "C2")) {
			desk.locator("#code").focus();
			desk.keyboard().type(code);
			long called = System.nanoTime();
			desk.keyboard().press("Enter");
			tablet.waitForFunction("(code) => document.body.innerText.includes(code)", code);
			waited.add((System.nanoTime() - called) / 1_000_000);
		}
		System.out.println("From a call to a judge's tablet, ms: " + waited.stream().sorted().toList());
		assertThat(waited.stream().sorted().toList().get(waited.size() / 2)).isLessThan(1500);
	}

	@Test
	void aCallMadeWithoutANetworkIsKeptAndSentOnce() {
		Page desk = desk(1024, 768);
		type(desk, "ME4");
		expectCodes(desk, "ME4");
		desk.context().setOffline(true);
		type(desk, "TwE3");
		type(desk, "AC1");
		assertThat(desk.locator("#sending")).isVisible();
		assertThat(desk.locator("#no-contact")).isVisible();
		desk.context().setOffline(false);
		expectCodes(desk, "ME4", "TwE3", "AC1");
		assertThat(desk.locator("#sending")).isHidden();
		assertThat(calls()).containsExactly("ME4", "TwE3", "AC1");
	}

	@Test
	void whatThePageCannotShowIsSaidAndCallsGoOutAllTheSame() {
		Page desk = desk(1024, 768);
		desk.evaluate("document.getElementById('deducted').remove()");
		assertThat(desk.locator("#fault")).isVisible();
		Looks.expectAccessible(desk);
		type(desk, "ME4");
		type(desk, "AC1");
		expectCodes(desk, "ME4", "AC1");
		assertThat(desk.locator("#no-contact")).isHidden();
		assertThat(calls()).containsExactly("ME4", "AC1");
		this.screens.complaints().clear();
	}

	/** A request that was cut short, or that a newer service does not know. */
	@Test
	void whatTheServiceCannotReadIsSaidNotToBeDone() {
		Page desk = desk(1024, 768);
		type(desk, "TwE3");
		expectCodes(desk, "TwE3");
		desk.route("**/list", (route) -> route.resume(new Route.ResumeOptions()
			.setPostData("act=CALL&value=ME4&_csrf=" + desk.locator("#find [name=_csrf]").inputValue())));
		type(desk, "ME4");
		assertThat(desk.locator("#not-done")).containsText("Not done: Call an element ME4");
		assertThat(desk.locator("#not-done button")).isFocused();
		assertThat(desk.locator("#sending")).isHidden();
		Looks.expectAccessible(desk);
		desk.unroute("**/list");
		key(desk, "Enter");
		assertThat(desk.locator("#not-done")).isHidden();
		assertThat(desk.locator("#code")).isFocused();
		type(desk, "AC1");
		expectCodes(desk, "TwE3", "AC1");
		assertThat(calls()).containsExactly("TwE3", "AC1");
		this.screens.complaints().clear();
	}

	@Test
	void thereIsNothingToReadBackWhileNobodyIsOnTheIce() {
		SegmentRun run = this.context.getBean(SegmentRun.class);
		Page desk = desk(1024, 768);
		assertThat(desk.locator("#read-back")).isVisible();
		run.takeBack(this.skating.id(), this.day.now(this.skating).version(), SmallCompetition.REFEREE);
		assertThat(desk.locator("#read-back")).isHidden();
		key(desk, "Control+Enter");
		desk.reload();
		assertThat(desk.locator("#ice")).containsText("Nobody is on the ice.");
		assertThat(desk.locator("#read-back")).isHidden();
		this.skating = this.day.callNext(1);
		assertThat(desk.locator("#read-back")).isVisible();
	}

	@Test
	void whatTheTableDoesNotHaveIsSaidAndTheListStays() {
		Page desk = desk(1024, 768);
		type(desk, "TwE3");
		expectCodes(desk, "TwE3");
		key(desk, "ArrowUp", "d");
		assertThat(desk.locator("#refused")).containsText("The table of values has no downgrade of TwE3.");
		assertThat(desk.locator("#refused button")).isFocused();
		key(desk, "Enter");
		assertThat(desk.locator(".row")).isFocused();
		desk.locator("#code").fill("zzz");
		assertThat(desk.locator("#none-found")).isVisible();
		assertThat(calls()).containsExactly("TwE3");
	}

	@Test
	void everythingCanBeTouched() {
		Page desk = desk(768, 1024);
		desk.locator("#plan .take").nth(1).click();
		desk.locator("#plan .take").nth(0).click();
		expectCodes(desk, "ME4", "I4+pi3");
		desk.locator("#called .row").first().click();
		assertThat(desk.locator("#chosen")).hasText("Element 1 ME4");
		tool(desk, "LEVEL", "3").click();
		tool(desk, "LATER", null).click();
		expectCodes(desk, "I4+pi3", "ME3");
		assertThat(tool(desk, "PART", "2")).isDisabled();
		desk.locator("[data-quick=ONE_FALL]").click();
		desk.locator("[data-back='0']").click();
		assertThat(desk.locator("#deducted li")).hasCount(0);
		tool(desk, "REMOVE", null).click();
		expectCodes(desk, "I4+pi3");
		assertThat((Integer) desk.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(768);
		assertThat(
				this.context.getBean(DeductionNotes.class).ofPerformance(this.skating.id()).orElseThrow().deductions())
			.isEmpty();
	}

	@Test
	void theListIsReadBackAndAuthorisedInTwoKeysOnceEverythingHasArrived() {
		Page desk = desk(1280, 800);
		List<Route> held = new CopyOnWriteArrayList<>();
		desk.route("**/list", held::add);
		type(desk, "ME4");
		key(desk, "Control+Enter");
		desk.waitForCondition(() -> !held.isEmpty());
		assertThat(desk).not().hasURL(Pattern.compile("read-back"));
		desk.unroute("**/list");
		held.get(0).resume();
		desk.waitForURL("**/read-back");
		assertThat(desk.locator(".reading code")).hasText("ME4");
		assertThat(desk.locator("#authorise")).isFocused();
		key(desk, "Escape");
		assertThat(desk.locator("#code")).isFocused();
		key(desk, "Control+Enter");
		assertThat(desk.locator("#authorise")).isFocused();
		key(desk, "Enter");
		assertThat(desk.locator(".notice")).hasText("The list of elements is authorised.");
	}

	@Test
	void whatHasNoAnswerSurvivesAReloadAndIsDoneOnce() {
		Page desk = desk(1024, 768);
		List<Route> lost = new CopyOnWriteArrayList<>();
		desk.route("**/list", (route) -> {
			if (lost.isEmpty()) {
				route.fetch();
			}
			lost.add(route);
			route.abort();
		});
		type(desk, "ME4");
		type(desk, "AC1");
		desk.waitForCondition(() -> !lost.isEmpty());
		this.context.getBean(TechnicalDesk.class)
			.edit(new TechnicalDesk.Edit(this.skating.id(), 1, TechnicalDesk.Act.CALL, null, "GL3"),
					SmallCompetition.SECRETARY);
		desk.unroute("**/list");
		desk.reload();
		expectCodes(desk, "ME4", "GL3", "AC1");
		assertThat(desk.locator("#sending")).isHidden();
		desk.reload();
		expectCodes(desk, "ME4", "GL3", "AC1");
		assertThat(calls()).containsExactly("ME4", "GL3", "AC1");
	}

	@Test
	void whatIsOnlyLikeACodeCallsNothing() {
		Page desk = desk(1024, 768);
		for (String typed : List.of("ME", "s4", "TwE5", "twizzle")) {
			type(desk, typed);
			assertThat(desk.locator("#no-code")).containsText("has no code “" + typed + "”, so nothing was called");
			desk.locator("#code").fill("");
			assertThat(desk.locator("#no-code")).isHidden();
		}
		assertThat(this.context.getBean(ElementCalls.class).ofPerformance(this.skating.id())).isEmpty();
		desk.locator("#code").pressSequentially("twizzle");
		key(desk, "ArrowDown", "Enter");
		expectCodes(desk, "TwEB");
	}

	@Test
	void listToolsAndReadingBackAreInSightForFourteenElements() {
		this.context.getBean(ElementCalls.class)
			.call(new ElementCalls.CallElements(this.skating.id(), 1, Collections.nCopies(14,
					new ElementCalls.CallElements.Call(null, "NHE3+s4", JudgedElement.ElementWorth.COUNTS, null))),
					SmallCompetition.SECRETARY);
		Page desk = desk(1280, 800);
		assertThat(desk.locator("#called .row")).hasCount(14);
		for (Locator part : desk.locator("#ice h2, #code, #called .row, .tools button, [data-quick], #read-back")
			.all()) {
			BoundingBox box = part.boundingBox();
			assertThat(box.y).isNotNegative();
			assertThat(box.y + box.height).as(part.textContent()).isLessThanOrEqualTo(800);
		}
		assertThat((Integer) desk.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(1280);
	}

	@Test
	void theRefereeReadsWithoutAHand() {
		Page desk = desk(1440, 900);
		type(desk, "ME4");
		Page referee = this.screens.signedIn(Role.REFEREE);
		referee.navigate("/desk/technical/" + this.day.segment(1));
		assertThat(referee.locator("#called code")).hasText("ME4");
		assertThat(referee.locator("#code, .tools, [data-quick], #read-back")).hasCount(0);
		type(desk, "AC2");
		expectCodes(referee, "ME4", "AC2");
		Looks.expectAccessible(referee);
	}

	private Page desk(int width, int height) {
		Page desk = this.screens.signedIn(Role.TECHNICAL);
		desk.setViewportSize(width, height);
		desk.navigate("/desk/technical/" + this.day.segment(1));
		return desk;
	}

	/** Once the script listens; before that the field takes neither focus nor keys. */
	private static void type(Page desk, String text) {
		assertThat(desk.locator("#code")).isEnabled();
		if (!(Boolean) desk.evaluate("document.activeElement.id === 'code'")) {
			desk.locator("#code").focus();
		}
		desk.keyboard().type(text);
		desk.keyboard().press("Enter");
	}

	private static void key(Page desk, String... keys) {
		for (String key : keys) {
			desk.keyboard().press(key);
		}
	}

	private static Locator tool(Page desk, String act, String value) {
		return desk.locator(".tools [data-act=" + act + "]" + ((value != null) ? "[data-value='" + value + "']" : ""));
	}

	private static void expectCodes(Page desk, String... codes) {
		assertThat(desk.locator("#called code")).hasText(codes);
	}

	private List<String> calls() {
		return this.context.getBean(ElementCalls.class)
			.ofPerformance(this.skating.id())
			.orElseThrow()
			.elements()
			.stream()
			.map(CalledElement::code)
			.toList();
	}

}
