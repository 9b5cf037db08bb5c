package rimebook;

import java.util.List;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.SegmentId;
import rimebook.testsupport.BrowserTest;
import rimebook.testsupport.Browsers;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;
import rimebook.timetable.TimetableVersions;
import rimebook.timetable.Timetables;
import rimebook.timetable.plan.Block;
import rimebook.timetable.BlockDraft;
import rimebook.timetable.PlanView;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What is planned moves and is taken back, a segment is cancelled and brought back, with
 * every screen open on which it stands. None is loaded again, and no console complains.
 */
@WholeApplication
@BrowserTest
class PlanTakenBackBrowserTests {

	private static final String LUNCH = "The bakers’ lunch";

	private static final String SOFT = "The ice is soft.";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Timetables timetables;

	@Autowired
	private TimetableVersions versions;

	@Autowired
	private Cancellations cancellations;

	private final Browsers browsers;

	private final Screens screens;

	PlanTakenBackBrowserTests(Browsers browsers) {
		this.browsers = browsers;
		this.screens = new Screens(browsers);
	}

	@Test
	void everyOpenScreenFollowsThereAndBack() {
		SmallCompetition day = SmallCompetition.running(this.context, 3, CompetitionFixtures.anEvent("Junior", 3));
		CompetitionId id = day.competition().id();
		PlanView filled = this.timetables.fill(id, 0, SmallCompetition.REFEREE);
		this.versions.publish(id, filled.number(), "", SmallCompetition.REFEREE);
		SegmentId first = day.open(1);
		String follow = "/follow/" + day.competition().slug();
		String event = follow + "/" + day.event().slug();
		Page timetable = this.screens.open("timetable", follow + "/timetable", "main");
		Page board = this.screens.open("board", follow + "/board/timetable", "main");
		Page competition = this.screens.open("competition", follow, "main");
		this.screens.open("event", event, "main");
		Page free = this.screens.open("free skating", event + "/" + day.event().segments().get(1).slug(), "main");
		this.screens.open("order", event + "/" + day.event().segments().get(0).slug() + "/order", "main");
		this.screens.kept("stand", this.browsers.signedIn(Role.REFEREE, "/desk/stand/" + first), "main");
		this.screens.kept("plan", this.browsers.signedIn(Role.SECRETARY, "/desk/timetable/" + id), "main");

		PlanView with = this.timetables.add(id, filled.number(), new BlockDraft(filled.plan().sheets().get(0).place(),
				Block.Kind.BREAK, LUNCH, 1800, Block.Timing.NEXT, null), 0, SmallCompetition.REFEREE);
		this.versions.publish(id, with.number(), "Lunch comes first.", SmallCompetition.REFEREE);
		this.screens.expect("timetable", LUNCH, "Lunch comes first.");
		this.screens.expect("board", LUNCH);

		PlanView without = this.timetables.takeBack(id, with.number(), SmallCompetition.REFEREE);
		this.versions.publish(id, without.number(), "No lunch after all.", SmallCompetition.REFEREE);
		this.screens.expect("timetable", "No lunch after all.");
		for (Page page : List.of(board, competition)) {
			PlaywrightAssertions.assertThat(page.locator("main")).not().containsText(LUNCH);
		}

		SegmentId second = day.segment(2);
		this.cancellations.cancel(second, SOFT, SmallCompetition.SECRETARY);
		this.screens.expect("timetable", "ancelled");
		this.screens.expect("competition", "ancelled");
		this.screens.expect("event", "ancelled");
		this.screens.expect("free skating", SOFT);
		this.cancellations.bringBack(second, SmallCompetition.SECRETARY);
		for (Page page : List.of(timetable, competition, free)) {
			PlaywrightAssertions.assertThat(page.locator("main")).not().containsText("ancelled");
		}
		day.skateNext(1);
		this.screens.expect("event", "fter 1 of 3");
		this.screens.expect("stand", "Team");
		assertThat(this.browsers.complaints()).isEmpty();
	}

}
