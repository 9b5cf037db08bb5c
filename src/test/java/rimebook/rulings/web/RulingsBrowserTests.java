package rimebook.rulings.web;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

/** A question from the secretary's desk to the referee's stand. */
@WholeApplication
@BrowserTest
class RulingsBrowserTests {

	private final Browsers screens;

	@Autowired
	private ApplicationContext context;

	RulingsBrowserTests(Browsers screens) {
		this.screens = screens;
	}

	@Test
	void aQuestionIsAskedRuledOnSupersededAndSeenAtTheStand() {
		SmallCompetition day = SmallCompetition.running(this.context, 2, 3);
		day.open(1);
		EntryId first = day.callNext(1).entry();
		String team = this.context.getBean(Entries.class).entry(first).team().name();
		Page secretary = this.screens.signedIn(Role.SECRETARY);
		Page referee = this.screens.signedIn(Role.REFEREE);
		Page stand = referee.context().newPage();
		stand.navigate("/desk/stand/" + day.segment(1));
		secretary.navigate("/desk/rulings?competition=" + day.competition().id());
		Looks.expectFitsAndNoFinding(secretary);
		secretary.click("text=Ask the referee");
		secretary.click("form.sheet button.main");
		assertThat(secretary.locator(".summary")).containsText("Choose the team that asks.");
		Looks.expectFitsAndNoFinding(secretary);
		secretary.selectOption("#entry", first.toString());
		secretary.check("#topic-COSTUME");
		secretary.fill("#question", "May the cord hang loose?");
		secretary.fill("#askedBy", "Mira Sund, team manager");
		secretary.click("form.sheet button.main");
		assertThat(secretary.locator(".notice")).hasText("The question waits for the referee.");
		assertThat(stand.locator("#team-rulings")).containsText("Costume: May the cord hang loose?");
		referee.navigate("/desk/rulings?competition=" + day.competition().id() + "&state=open");
		referee.click("tbody a");
		Looks.expectFitsAndNoFinding(referee);
		referee.click("text=Give the ruling");
		Looks.expectFitsAndNoFinding(referee);
		referee.check("#verdict-CONDITIONAL");
		referee.fill("#condition", "if it is sewn on at both ends");
		referee.fill("#grounds", "A cord that cannot come off is part of the costume.");
		referee.click("form.sheet button.main");
		assertThat(referee.locator(".notice")).hasText("The ruling is given.");
		assertThat(stand.locator("#team-rulings")).containsText("Condition: if it is sewn on at both ends");
		Looks.expectFits(stand, 1440, 820);
		Looks.expectNoFinding(stand);
		referee.click("text=Supersede the ruling");
		assertThat(referee.locator("#grounds")).hasValue("A cord that cannot come off is part of the costume.");
		referee.check("#verdict-NOT_ALLOWED");
		referee.fill("#condition", "");
		referee.fill("#reason", "It came off in practice.");
		referee.click("form.sheet button.main");
		assertThat(referee.locator(".superseded")).containsText("if it is sewn on at both ends");
		Looks.expectFitsAndNoFinding(referee);
		assertThat(stand.locator("#team-rulings .state")).hasText("not allowed");
		referee.navigate("/desk/sheet/" + day.segment(1));
		assertThat(referee.locator(".announcer li.now")).containsText(team);
		assertThat(referee.locator(".announcer li.now .rulings")).containsText("not allowed");
		Looks.expectFitsAndNoFinding(referee);
	}

}
