package rimebook.stand.web;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.clock.ClockFixtures;
import rimebook.clock.ClockView;
import rimebook.clock.InterruptionCause;
import rimebook.clock.PerformanceClock;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.competition.SegmentView;
import rimebook.performances.PerformanceView;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

@WholeApplication
@BrowserTest
class StandClockBrowserTests {

	private static final Pattern RUNNING = Pattern.compile("\\d+:\\d\\d");

	@Autowired
	private ApplicationContext context;

	private SmallCompetition day;

	private PerformanceView onIce;

	private final Browsers screens;

	StandClockBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void aProgrammeIsInterruptedGoesOnAndIsStoppedWhileANoticeIsTyped() {
		call(SmallCompetition.running(this.context, 3, 3));
		Page stand = stand();
		Page second = stand();
		stand.fill("#remark-form [name=text]", "cape lost at the red line");
		stand.click("#clock-start");
		assertThat(second.locator("#clock-stop")).isVisible();
		stand.click("#interruption summary");
		assertThat(stand.locator("#interruption .caution")).containsText("Is a skater hurt?");
		Looks.expectAccessible(stand);
		stand.click("#cause-INJURY");
		assertThat(stand.locator("#clock .dial.pause")).isVisible();
		assertThat(second.locator("#clock .dial.pause")).containsText("Interrupted: Injury; limit 3:00");
		assertThat(second.locator("#told")).containsText("Interrupted: injury");
		Looks.expectAccessible(stand);
		stand.fill("#point", "the second block");
		send(1);
		assertThat(stand.locator(".seat-list li.in")).hasCount(1);
		assertThat(stand.locator("#point")).hasValue("the second block");
		stand.click("#clock-resume");
		assertThat(second.locator("#clock-stop")).isVisible();
		stand.click("#clock-stop");
		assertThat(stand.locator("#clock .words")).containsText("too short");
		assertThat(second.locator("#clock-take-back")).hasText("Take back the stop");
		assertThat(stand.locator("#remark-form [name=text]")).hasValue("cape lost at the red line");
		Looks.expectAccessible(stand);
	}

	@Test
	void everyPageShowsTheSameRunningTimeAlsoAfterAReload() {
		call(SmallCompetition.running(this.context, 3, 3));
		ClockFixtures.of(this.context, this.onIce).touched(ClockView.ClockAct.START, 75);
		Page stand = stand();
		Page second = stand();
		assertThat(Math.abs(shown(stand) - shown(second))).isLessThanOrEqualTo(1);
		assertThat(shown(stand)).isBetween(75, 75 + 30);
		int before = shown(stand);
		long looked = System.nanoTime();
		stand.waitForCondition(() -> shown(stand) > before);
		assertThat(shown(stand) - before).isLessThanOrEqualTo(1 + seconds(System.nanoTime() - looked));
		stand.reload();
		assertThat(Math.abs(shown(stand) - shown(second))).isLessThanOrEqualTo(1);
	}

	@Test
	void theTimeSaysByItselfWhenItIsInsideAndWhenItIsTooLong() {
		call(SmallCompetition.running(this.context, 3, 3));
		SegmentView segment = this.day.event().segments().get(0);
		int least = segment.facts().programmeSeconds() - segment.facts().toleranceSeconds();
		ClockFixtures.of(this.context, this.onIce).touched(ClockView.ClockAct.START, least - 4);
		Page stand = stand();
		assertThat(stand.locator("#clock .words .state:visible")).hasText("inside the time");
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.TAKE_BACK, 0)
			.touched(ClockView.ClockAct.START,
					segment.facts().programmeSeconds() + segment.facts().toleranceSeconds() + 3);
		assertThat(stand.locator("#clock .words .state:visible")).hasText("too long");
		assertThat(stand.locator("#clock .outside")).hasText(Pattern.compile("by 0:\\d\\d"));
	}

	@Test
	void timeOverIsTakenAsADeductionWithOnePress() {
		call(SmallCompetition.running(this.context, 2,
				new DraftEvent("Senior",
						DraftEvent.Judging.byPoints(3, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
						List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree()))));
		SegmentView segment = this.day.event().segments().get(0);
		int most = segment.facts().programmeSeconds() + segment.facts().toleranceSeconds();
		ClockFixtures.of(this.context, this.onIce).touched(ClockView.ClockAct.START, most + 7);
		Page stand = stand();
		Page second = stand();
		second.click("#deduct summary");
		second.selectOption("#item", "fall");
		second.fill("#count", "3");
		stand.click("#clock-stop");
		assertThat(stand.locator(".proposals .accept")).isVisible();
		Looks.expectAccessible(stand);
		String proposed = stand.textContent(".proposals .accept");
		assertThat(proposed).startsWith("Deduct Time violation: -");
		stand.click(".proposals .accept");
		assertThat(stand.locator("#deductions li")).containsText(proposed.substring("Deduct ".length()));
		assertThat(second.locator("#deductions li")).containsText(proposed.substring("Deduct ".length()));
		assertThat(second.locator("#count")).hasValue("3");
		second.click("#deduct-send");
		assertThat(second.locator("#deductions li")).hasCount(2);
		Looks.expectAccessible(second);
		stand.setViewportSize(390, 844);
		assertThat((Integer) stand.evaluate("document.documentElement.scrollWidth")).isLessThanOrEqualTo(390);
	}

	@Test
	void theKeysOfTheClockDoNothingWhileSomethingIsTyped() {
		call(SmallCompetition.running(this.context, 3, 3));
		Page stand = stand();
		List<String> touches = new CopyOnWriteArrayList<>();
		stand.onRequest((request) -> {
			if (request.method().equals("POST")) {
				touches.add(request.url());
			}
		});
		stand.focus("#remark-form [name=text]");
		stand.keyboard().press("F8");
		assertThat(stand.locator("#clock-start kbd")).isVisible();
		stand.locator("h1").click();
		stand.keyboard().press("F8");
		assertThat(stand.locator("#clock-stop")).isVisible();
		assertThat(touches).singleElement().asString().endsWith("/clock/start");
		stand.keyboard().press("F9");
		assertThat(stand.locator("#cause-INJURY")).isVisible();
		assertThat(clock()).isEqualTo(ClockView.ClockState.RUNNING);
	}

	@Test
	void whoIsSecondIsToldOnThePageWhatTheFirstHasDone() {
		call(SmallCompetition.running(this.context, 3, 3));
		Page stand = stand();
		stand.route("**/live**", (route) -> route.abort());
		this.context.getBean(PerformanceClock.class).start(this.onIce.id(), 0, SmallCompetition.REFEREE);
		stand.click("#clock-start");
		assertThat(stand.locator("#not-sent")).containsText("Somebody else touched the clock");
		assertThat(stand.locator("#not-sent")).containsText("it is running now");
		stand.unroute("**/live**");
		assertThat(stand.locator("#clock-stop")).isVisible();
	}

	@Test
	void aTouchThatCannotBeSentLeavesThePageAsItIsAndIsMadeAgainByHand() {
		call(SmallCompetition.running(this.context, 3, 3));
		ClockFixtures.of(this.context, this.onIce)
			.touched(ClockView.ClockAct.START, 60)
			.interrupted(InterruptionCause.RINK, 20);
		Page stand = stand();
		stand.fill("#point", "the second block");
		stand.context().setOffline(true);
		stand.click("#clock-resume");
		assertThat(stand.locator("#not-sent")).isVisible();
		assertThat(stand.locator("#point")).hasValue("the second block");
		assertThat(clock()).isEqualTo(ClockView.ClockState.INTERRUPTED);
		stand.context().setOffline(false);
		stand.click("#clock-resume");
		assertThat(stand.locator("#told")).containsText("Resumed at the point of the second block");
		assertThat(stand.locator("#not-sent")).isHidden();
	}

	private void call(SmallCompetition competition) {
		this.day = competition;
		this.day.open(1);
		this.onIce = this.day.callNext(1);
	}

	private ClockView.ClockState clock() {
		return this.context.getBean(PerformanceClock.class).ofPerformance(this.onIce.id()).state();
	}

	private Page stand() {
		return this.screens.signedIn(Role.REFEREE, "/desk/stand/" + this.day.segment(1));
	}

	/** Rounded up. */
	private static int seconds(long nanos) {
		return (int) Math.ceil(nanos / 1e9);
	}

	private static int shown(Page stand) {
		assertThat(stand.locator("#clock .time")).hasText(RUNNING);
		String[] time = stand.textContent("#clock .time").split(":");
		return Integer.parseInt(time[0]) * 60 + Integer.parseInt(time[1]);
	}

	private void send(int judge) {
		this.day.send(this.onIce, this.day.seats().get(judge - 1), 1, new CardMarks(500, 510));
	}

}
