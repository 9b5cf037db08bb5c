package rimebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.DraftEvent;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceView;
import rimebook.points.CalledElement;
import rimebook.points.CalledListView;
import rimebook.points.DeductionNotes;
import rimebook.points.ElementCalls;
import rimebook.points.ListAuthorisations;
import rimebook.points.PointsMarks;
import rimebook.points.PointsSubmission;
import rimebook.shared.Actor;
import rimebook.tabulation.points.JudgedElement;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/** The pages of an event judged by points, as a browser shows them on phone to desk. */
@WholeApplication
@BrowserTest
class PointsPagesBrowserTests {

	private static final List<String> CODES = List.of("I4+pi3", "ME4<", "NHE3+s4", "TwE3", "AC2");

	private final Browsers screens;

	@Autowired
	private ApplicationContext context;

	private SmallCompetition day;

	PointsPagesBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@BeforeEach
	void twoTeamsHaveSkated() {
		this.day = SmallCompetition.running(this.context, 4,
				new DraftEvent("Senior",
						DraftEvent.Judging.byPoints(9, new DraftEvent.PointsChoice("synchronized-2025-26", "senior")),
						List.of(CompetitionFixtures.aShort(), CompetitionFixtures.aFree())));
		this.day.open(1);
		for (int team = 0; team < 2; team++) {
			PerformanceView performance = this.day.callNext(1);
			judge(performance, 9, team);
			this.day.close(performance);
		}
		judge(this.day.callNext(1), 4, 2);
	}

	private void judge(PerformanceView performance, int cards, int team) {
		CalledListView list = this.context.getBean(ElementCalls.class)
			.call(new ElementCalls.CallElements(performance.id(), 1, CODES.stream()
				.map((code) -> new ElementCalls.CallElements.Call(null, code, JudgedElement.ElementWorth.COUNTS, null))
				.toList()), SmallCompetition.ACCOUNTANT);
		this.context.getBean(ListAuthorisations.class)
			.authorise(performance.id(), list.sequence(), new Actor("Ada Edge", "technical", "test"));
		this.context.getBean(DeductionNotes.class)
			.note(new DeductionNotes.NoteDeductions(performance.id(), 1,
					List.of(new DeductionNotes.NoteDeductions.Item("fall", 2))), SmallCompetition.ACCOUNTANT);
		for (SeatView seat : this.day.seats().subList(0, cards)) {
			Map<UUID, Integer> grades = list.elements()
				.stream()
				.collect(Collectors.toMap(CalledElement::id, (element) -> (seat.number() + team) % 5 - 1));
			Map<String, Integer> components = new LinkedHashMap<>();
			List.of("Composition", "Presentation", "Skating Skills")
				.forEach((name) -> components.put(name, 650 + 25 * ((seat.number() + team) % 4)));
			this.context.getBean(PointsSubmission.class)
				.submit(new PointsSubmission.SubmitPointsCard(UUID.randomUUID(), performance.id(), 1,
						new PointsMarks(grades, components)), seat.id(), new Actor(seat.label(), "judge", "test"));
		}
	}

	@Test
	void publicPagesFitAndAreOpenToEverybody() {
		String event = "/follow/" + this.day.competition().slug() + "/senior";
		Page page = this.screens.screen(1280, 720);
		for (String path : List.of(event, event + "/" + this.day.event().segments().get(0).slug(),
				event + "/" + this.day.event().segments().get(0).slug() + "?lang=fr",
				event + "/" + this.day.event().segments().get(0).slug() + "?lang=fi")) {
			fits(page, path);
		}
	}

	@Test
	void deskPagesFitAndAreOpenToEverybody() {
		String event = "/desk/competitions/" + this.day.competition().id() + "/events/" + this.day.event().id();
		String keying = "/desk/keying/" + this.day.segment(1);
		Page page = this.screens.signedIn(Role.ADMINISTRATOR);
		for (String path : List.of(event, event + "/edit", event + "/rules", event + "/rules/values", "/desk/keying",
				keying, keying + "/elements", keying + "/cards/7", keying + "/deductions", keying + "/authorisation",
				"/desk/entries/entry/" + this.day.entries().get(0).id(),
				"/desk/entries/entry/" + this.day.entries().get(0).id() + "/elements/" + this.day.segment(2),
				"/desk/stand/" + this.day.segment(1), "/desk/results/" + this.day.segment(1), "/desk/technical",
				"/desk/technical/" + this.day.segment(1), "/desk/technical/" + this.day.segment(1) + "/read-back",
				"/desk/protests/" + this.day.segment(1))) {
			fits(page, path);
		}
	}

	@Test
	void correctionPagesFitAndAreOpenToEverybody() {
		String corrections = "/desk/protests/" + this.day.segment(1) + "/corrections/new";
		Page page = this.screens.signedIn(Role.ACCOUNTANT);
		for (String path : List.of(corrections, corrections + "/element", corrections + "/deduction")) {
			fits(page, path);
		}
	}

	@Test
	void aCardIsKeyedInWithTheKeyboardAlone() {
		Page page = this.screens.signedIn(Role.ACCOUNTANT);
		page.navigate("/desk/keying/" + this.day.segment(1) + "/cards/5");
		// A browser that is busy puts the cursor there a moment after the page is loaded.
		page.waitForFunction("document.activeElement.name === 'lines[0].typed'");
		for (String typed : List.of("+2", "-1", "0", "3", "1", "7.25", "7,5", "7")) {
			page.keyboard().type(typed);
			page.keyboard().press("Enter");
		}
		page.keyboard().press("Enter");
		page.waitForURL((url) -> url.endsWith("/cards/6"));
		assertThat(page.locator(".notice").innerText()).contains("Judge 5: keyed once.");
		assertThat(page.evaluate("document.activeElement.name")).isEqualTo("lines[0].typed");
	}

	private void fits(Page page, String path) {
		page.navigate(path);
		assertThat(page.locator("h1").count()).as(path).isEqualTo(1);
		page.evaluate("document.querySelectorAll('details').forEach((each) => each.open = true)");
		Looks.expectFitsAndNoFinding(page);
	}

}
