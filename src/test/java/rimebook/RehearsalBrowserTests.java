package rimebook;

import java.nio.file.Path;
import java.util.List;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.DraftEvent;
import rimebook.competition.EventView;
import rimebook.competition.JudgingMethod;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.panels.Panels;
import rimebook.panels.SeatKind;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/**
 * A whole day on which everything goes wrong: an interruption, a re-skate, two
 * withdrawals, a disqualification taken back, a judge who falls ill, a protest upheld
 * after the signatures, a cancelled event. Stand, tablets, board and the public's pages
 * are open all the time and are never loaded again; what each said after each act is
 * written to {@code target/rehearsal.md}. No console may complain.
 */
@WholeApplication
@BrowserTest
class RehearsalBrowserTests {

	private static final Path TABLE = Path.of("target", "rehearsal.md");

	private static final int JUDGES = 5;

	@Autowired
	private ApplicationContext context;

	private final Browsers browsers;

	private final Screens screens;

	private SmallCompetition day;

	private EventView novice;

	private Page secretary;

	private Page referee;

	private Page stand;

	private Page accountant;

	private Page judge;

	private Page substitute;

	private SeatView spare;

	RehearsalBrowserTests(Browsers browsers) {
		this.browsers = browsers;
		this.screens = new Screens(browsers);
	}

	@BeforeEach
	void openTheDoors() {
		Competitions competitions = this.context.getBean(Competitions.class);
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 6,
				CompetitionFixtures.anEvent("Junior", JUDGES).signedAtOnce());
		this.novice = competitions
			.addEvent(
					this.day.competition().id(), new DraftEvent("Novice",
							DraftEvent.Judging.by(JudgingMethod.MAJORITY, 3), List.of(CompetitionFixtures.aFree())),
					SmallCompetition.SECRETARY);
		this.day.move(CompetitionState.ENTRIES_CLOSED);
		this.day.move(CompetitionState.RUNNING);
		this.spare = this.day.seatSubstitute();
		this.context.getBean(Panels.class).issueCodes(this.day.event().id(), SmallCompetition.REFEREE);
		this.day.draw(1);
	}

	@AfterEach
	void closeTheDoors() {
		this.screens.keep(TABLE);
	}

	@Test
	void everythingGoesWrongAndTheDayEndsWithASignedResult() {
		bringTheScreens();
		withdrawBeforeTheFirstCall();
		skateWithAnInterruption();
		skateAgainFromTheBeginning();
		judgeFallsIll();
		disqualifyAndTakeItBack();
		signTheSegment(1);
		withdrawBetweenTheSegments();
		skateTheFree();
		signTheSegment(2);
		protestAfterTheSignatures();
		cancelTheOtherEvent();
		endTheDay();
		assertThat(this.browsers.complaints()).isEmpty();
		assertThat(this.context.getBean(RecordVerification.class).verify().isWhole()).isTrue();
	}

	private void bringTheScreens() {
		String slug = this.day.competition().slug();
		this.secretary = this.browsers.signedIn(Role.SECRETARY);
		String second = Crew.add(this.context, Role.ACCOUNTANT);
		this.day.seatInstead(SeatKind.ACCOUNTANT, Crew.displayName(second));
		this.accountant = this.browsers.signedIn(second);
		String name = Crew.add(this.context, Role.REFEREE);
		this.day.seatInstead(SeatKind.REFEREE, Crew.displayName(name));
		this.referee = this.browsers.signedIn(name);
		this.stand = this.browsers.signedIn(name);
		this.screens.kept("stand", this.stand, ".ice, .differs li, #decision");
		this.judge = this.screens.tablet("judge 1", seat(1).code(), ".card .head, #truth");
		this.screens.tablet("judge 3", seat(3).code(), ".card .head, #truth");
		this.substitute = this.screens.tablet("substitute", spare().code(), ".card .head, #truth");
		this.screens.open("board", "/follow/" + slug + "/board", "main");
		this.screens.open("segment", "/follow/" + slug + "/junior/short-programme", "#live");
		this.screens.open("event", "/follow/" + slug + "/junior", "#live");
		this.screens.open("competition", "/follow/" + slug, "#live");
	}

	private void withdrawBeforeTheFirstCall() {
		withdraw(team(6));
		this.screens.told("team of No. 6 withdrawn before the first call");
		this.stand.navigate("/desk/stand/" + this.day.segment(1));
		press(this.stand, "form[action$='/open'] button");
		this.screens.expect("stand", "withdrawn");
		this.screens.told("segment opened");
		call();
		mark(1, 50);
		close();
		this.screens.expect("segment", "fter 1 of 5");
	}

	private void skateWithAnInterruption() {
		call();
		press(this.stand, "#clock-start");
		press(this.stand, "#interruption summary");
		press(this.stand, "#cause-MUSIC");
		this.screens.expect("judge 1", "nterrupt");
		this.screens.expect("board", "nterrupt");
		this.screens.told("No. 2 interrupted: music");
		this.stand.fill("#point", "the second block");
		press(this.stand, "#clock-resume");
		this.screens.expect("judge 1", "the second block");
		this.screens.told("No. 2 goes on");
		press(this.stand, "#clock-stop");
		mark(2, 48);
		close();
		this.screens.expect("segment", "fter 2 of 5");
	}

	private void skateAgainFromTheBeginning() {
		call();
		press(this.stand, "#clock-start");
		mark(3, 30);
		press(this.stand, "#interruption summary");
		press(this.stand, "#cause-MUSIC");
		press(this.stand, "#reskate summary");
		this.stand.check("[name=marking][value=RESKATED_ONLY]");
		press(this.stand, "#clock-reskate");
		this.screens.expect("judge 1", "mark only the re-skated programme");
		this.screens.told("No. 3 skates again from the beginning");
		press(this.stand, "#clock-start");
		press(this.stand, "#clock-stop");
		mark(3, 46);
		close();
		this.screens.expect("segment", "fter 3 of 5");
	}

	private void judgeFallsIll() {
		press(this.stand, "#take-over summary");
		this.stand.locator("#take-over label", new Page.LocatorOptions().setHasText("Judge 3")).click();
		this.stand.fill("#takeoverReason", "Judge 3 was taken ill at 14:05.");
		press(this.stand, "#take-over button.stop");
		this.screens.expect("stand", "The panel is not as drawn");
		this.screens.expect("judge 3", "substitute");
		this.screens.told("judge 3 ill, the substitute takes over");
		call();
		mark(4, 44);
		close();
		this.screens.expect("segment", "fter 4 of 5");
		this.screens.told("No. 4 closed with the substitute's card");
	}

	private void disqualifyAndTakeItBack() {
		call();
		mark(5, 52);
		close();
		this.screens.expect("segment", "All 5 teams have skated");
		setStatus(5, PerformanceStatus.DISQUALIFIED);
		this.screens.expect("segment", "isqualified");
		this.screens.expect("event", "isqualified");
		this.screens.told("No. 5 disqualified by two names");
		setStatus(5, PerformanceStatus.CLOSED);
		this.screens.expect("segment", "disqualified became marks count");
		this.screens.expect("event", "disqualified became marks count");
		this.screens.told("the disqualification taken back by two names");
	}

	private void signTheSegment(int position) {
		String path = "/desk/results/" + this.day.segment(position);
		this.accountant.navigate(path);
		press(this.accountant, "form[action$='/posting'] button");
		this.screens.told("segment " + position + " posted");
		signPosted(position);
	}

	private void signPosted(int position) {
		String path = "/desk/results/" + this.day.segment(position);
		sign(this.referee, path, "REFEREE");
		sign(this.accountant, path, "ACCOUNTANT");
		this.screens.expect("event", "fficial");
		this.screens.told("segment " + position + " signed");
	}

	private void withdrawBetweenTheSegments() {
		withdraw(team(4));
		this.screens.expect("event", "ithdrawn");
		this.screens.told("a team withdrawn between the segments");
	}

	private void skateTheFree() {
		this.day.draw(2);
		this.context.getBean(SegmentRun.class).open(this.day.segment(2), SmallCompetition.REFEREE);
		this.stand.navigate("/desk/stand/" + this.day.segment(2));
		for (int skated = 1; skated <= 4; skated++) {
			call();
			mark(skated, 50 - skated);
			close();
			this.screens.expect("board", (skated < 4) ? "fter " + skated + " of 4" : "Result");
		}
		this.screens.told("the free skated");
	}

	private void protestAfterTheSignatures() {
		String path = "/desk/protests/" + this.day.segment(2);
		this.accountant.navigate(path + "/new");
		this.accountant.selectOption("[name=entry]", new SelectOption().setIndex(1));
		this.accountant.selectOption("[name=category]", new SelectOption().setIndex(1));
		this.accountant.fill("[name=text]", "A mark was read as 4.8 and was 5.8.");
		this.accountant.fill("[name=filedBy]", "The team's manager");
		press(this.accountant, "main form button.main");
		this.screens.told("a protest taken after the signatures");
		this.referee.navigate(path);
		press(this.referee, "main a[href*='/protest/']");
		this.referee.fill("[name=grounds]", "The paper says 5.8.");
		press(this.referee, "button[name=upheld][value=true]");
		this.referee.navigate("/desk/results/" + this.day.segment(2));
		this.referee.fill("[name=reason]", "The protest is upheld: a mark is corrected.");
		press(this.referee, "form[action$='/reopening'] button");
		this.screens.told("protest upheld, the result opened again");
		this.accountant.navigate(path);
		press(this.accountant, "main a[href*='/protest/']");
		press(this.accountant, "main a[href*='corrections/new?protest=']");
		this.accountant.selectOption("[name=seat]", new SelectOption().setIndex(1));
		this.accountant.fill("[name=first]", "5.8");
		this.accountant.fill("[name=second]", "5.8");
		this.accountant.fill("[name=reason]", "As the paper says.");
		press(this.accountant, "main form button.main");
		press(this.accountant, "main td a[href*='/corrections/']");
		approve();
		this.screens.told("the mark corrected by two names, posted anew");
		signPosted(2);
	}

	private void cancelTheOtherEvent() {
		this.secretary.navigate(
				"/desk/competitions/" + this.day.competition().id() + "/events/" + this.novice.id() + "/plan/CANCEL");
		this.secretary.fill("[name=reason]", "No team came.");
		press(this.secretary, "main form button.stop");
		this.screens.expect("competition", "ancelled");
		this.screens.told("the other event cancelled");
	}

	private void endTheDay() {
		String path = "/desk/competitions/" + this.day.competition().id();
		this.secretary.navigate(path);
		press(this.secretary, "a[href*='next=FINAL']");
		press(this.secretary, "main form button.main");
		assertThat(this.secretary.locator("main")).containsText("inal");
		this.screens.told("the competition final");
	}

	private void call() {
		press(this.stand, "#call");
		assertThat(this.judge.locator(".card")).hasAttribute("data-state", "marking");
	}

	/**
	 * Judge 1 and the substitute touch keys, the tablets of the others send by
	 * themselves.
	 */
	private void mark(int number, int tenths) {
		PerformanceView skating = this.day.performances(current())
			.stream()
			.filter((one) -> one.status() == PerformanceStatus.ON_ICE)
			.findFirst()
			.orElseThrow();
		assertThat(skating.startNumber()).isEqualTo(number);
		touch(this.judge, tenths);
		for (SeatView seat : this.day.seats()) {
			if (!seat.label().equals("Judge 1") && !seat.id().equals(this.spare.id())) {
				this.day.send(skating, seat, 1, new CardMarks(10 * tenths, 10 * tenths));
			}
		}
		touch(this.substitute, tenths);
		assertThat(this.stand.locator(".seat-list li.in")).hasCount(JUDGES + 1);
	}

	/** What is typed before the tablet has the next card is said to the one before. */
	private void touch(Page tablet, int tenths) {
		assertThat(tablet.locator(".card")).hasAttribute("data-state", "marking");
		assertThat(tablet.locator("#send")).not().hasAttribute("data-state", "received");
		tablet.keyboard().type("" + tenths + tenths);
		tablet.locator("#send").click();
		assertThat(tablet.locator("#truth")).hasAttribute("data-state", "received");
	}

	private void close() {
		press(this.stand, "#close-ask");
		press(this.stand, "#close");
		assertThat(this.judge.locator(".card")).not().hasAttribute("data-state", "marking");
	}

	private int current() {
		return this.context.getBean(SegmentRun.class).performances(this.day.segment(2)).isEmpty() ? 1 : 2;
	}

	private void withdraw(EntryView team) {
		this.secretary.navigate("/desk/entries/entry/" + team.id() + "/withdraw");
		this.secretary.fill("[name=reason]", "Three skaters have a fever.");
		press(this.secretary, "main form button.stop");
	}

	/** The team of that number in the first segment's order. */
	private EntryView team(int number) {
		EntryId drawn = this.context.getBean(StartingOrderDraw.class)
			.ofSegment(this.day.segment(1))
			.orElseThrow()
			.starts()
			.get(number - 1)
			.entry();
		return this.day.entries().stream().filter((one) -> one.id().equals(drawn)).findFirst().orElseThrow();
	}

	private void setStatus(int number, PerformanceStatus status) {
		String path = "/desk/protests/" + this.day.segment(1);
		PerformanceView performance = this.day.performances(1)
			.stream()
			.filter((one) -> one.startNumber() == number)
			.findFirst()
			.orElseThrow();
		this.accountant.navigate(path + "/corrections/new/status?performance=" + performance.id());
		this.accountant.check("[name=status][value=" + status + "]");
		this.accountant.fill("[name=reason]", "As the referee decided at 14:20.");
		press(this.accountant, "main form button.main");
		approve();
	}

	/** The referee looks at the effect that stands on the accountant's page. */
	private void approve() {
		this.referee.navigate(this.accountant.url());
		press(this.referee, "form[action$='/approval'] button.main");
	}

	private void sign(Page signatory, String path, String as) {
		signatory.navigate(path);
		press(signatory, "a[href*='signatory=" + as + "']");
		signatory.fill("#password", Crew.PASSWORD);
		press(signatory, "main form button.main");
	}

	private SeatView seat(int number) {
		return this.day.seats().get(number - 1);
	}

	private SeatView spare() {
		return this.context.getBean(Panels.class)
			.withCard(this.day.event().id())
			.stream()
			.filter((seat) -> seat.id().equals(this.spare.id()))
			.findFirst()
			.orElseThrow();
	}

	private static void press(Page page, String selector) {
		page.locator(selector).first().click();
		page.waitForLoadState();
	}

}
