package rimebook.stand.web;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.SegmentId;
import rimebook.panels.Panels;
import rimebook.panels.SeatView;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.tabulation.CardMarks;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.Looks;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

/** Closed cards, the substitute and the absent judge, decided at the stand. */
@WholeApplication
@BrowserTest
class PanelAtTheStandBrowserTests {

	private final ApplicationContext context;

	private final SmallCompetition day;

	private final Browsers screens;

	PanelAtTheStandBrowserTests(@Autowired ApplicationContext context, Browsers screens) {
		this.screens = screens;
		this.context = context;
		this.day = SmallCompetition.running(context, 4, 3);
	}

	@Test
	void closedCardsAreOpenedAgainChangedAndClosedWhileTheNextTeamIsOnTheIce() {
		SegmentId segment = this.day.open(1);
		this.day.skateNext(1);
		PerformanceView first = this.day.performances(1).get(0);
		PerformanceView next = this.day.callNext(1);
		Page stand = stand(segment);
		stand.click("#reopen-1");
		stand.fill("#reopenReason", "Judge 2 typed 3.5 for 5.3");
		Looks.expectAccessible(stand);
		stand.click("#reopen button[type=submit]");
		assertThat(stand.locator("#reopened-title")).containsText("The cards of No. 1");
		assertThat(stand.locator(".strip-order li.again")).containsText("Judge 2 typed 3.5 for 5.3");
		stand.fill("#remark-form [name=text]", "being typed");
		this.day.send(first, this.day.seats().get(1), 2, new CardMarks(530, 540));
		assertThat(stand.locator("#reopened li").nth(1)).containsText("5.3 / 5.4");
		assertThat(stand.locator("#remark-form [name=text]")).hasValue("being typed");
		Looks.expectAccessible(stand);
		stand.click("#close-again-ask");
		stand.click("#close-again");
		assertThat(stand.locator(".notice")).hasText("The cards are closed and the standing is out.");
		assertThat(this.day.now(first).status()).isEqualTo(PerformanceStatus.CLOSED);
		assertThat(this.day.now(next).status()).isEqualTo(PerformanceStatus.ON_ICE);
	}

	@Test
	void theSubstituteTakesOverASeatAndGivesItBack() {
		SeatView substitute = this.day.seatSubstitute();
		SegmentId segment = this.day.open(1);
		PerformanceView first = this.day.callNext(1);
		this.day.sendAll(first);
		Page stand = stand(segment);
		assertThat(stand.locator(".seat-list li").last()).containsText("substitute, does not count");
		Page judge = this.screens.joined(code(this.day.seats().get(1)));
		Page other = this.screens.joined(code(substitute));
		assertThat(other.locator("#panel-word")).containsText("You are the substitute");
		takeOver(stand);
		assertThat(judge.locator("#panel-word")).containsText("The substitute has taken over this seat");
		assertThat(other.locator("#panel-word")).hasText("Your cards count in place of those of Judge 2.");
		Looks.expectAccessible(judge);
		assertThat(stand.locator("#panel")).containsText("taken over the seat of Judge 2");
		assertThat(stand.locator("#close-missing")).containsText("Substitute judge");
		Looks.expectAccessible(stand);
		stand.click("#take-back-seat summary");
		stand.fill("#takeBackReason", "The tablet works again");
		stand.click("#take-back-seat button[type=submit]");
		this.day.close(first);
		stand.reload();
		takeOver(stand);
		assertThat(stand.locator("#take-over .summary")).containsText("has none for No. 1");
		assertThat(stand.locator("#takeoverReason")).hasValue("A tablet that is wet");
		Looks.expectAccessible(stand);
	}

	@Test
	void anAbsentJudgeIsNamedWithTheRuleAndTheReason() {
		SegmentId segment = this.day.open(1);
		PerformanceView first = this.day.callNext(1);
		this.day.send(first, this.day.seats().get(0), 1, new CardMarks(500, 510));
		this.day.send(first, this.day.seats().get(2), 1, new CardMarks(520, 510));
		Page stand = stand(segment);
		stand.click("#absent-link");
		assertThat(stand.locator("#absent-judge .caution")).containsText("2 cards then count, an even number");
		stand.check("#absent label:has-text('Judge 2') input");
		stand.click("#absent-judge button[type=submit]");
		assertThat(stand.locator("#absentRule-fault")).containsText("is empty");
		assertThat(stand.locator("#absent label:has-text('Judge 2') input")).isChecked();
		Looks.expectAccessible(stand);
		stand.fill("#absentRule", "Rule 12.3");
		stand.fill("#absentReason", "Taken ill");
		stand.click("#absent-judge button[type=submit]");
		assertThat(stand.locator(".notice")).containsText("without the absent judge’s");
		assertThat(stand.locator("#panel")).containsText("Judge 2 is left out of the whole segment (Rule 12.3)");
		Looks.expectAccessible(stand);
	}

	private String code(SeatView seat) {
		return this.context.getBean(Panels.class).issueCode(seat.id(), SmallCompetition.REFEREE).code();
	}

	private static void takeOver(Page stand) {
		stand.click("#take-over summary");
		stand.check("#judge label:has-text('Judge 2') input");
		stand.fill("#takeoverReason", "A tablet that is wet");
		stand.click("#take-over button[type=submit]");
	}

	private Page stand(SegmentId segment) {
		return this.screens.signedIn(Role.REFEREE, "/desk/stand/" + segment);
	}

}
