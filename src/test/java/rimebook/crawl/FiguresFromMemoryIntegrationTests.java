package rimebook.crawl;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.panels.SeatKind;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Some figures of the rule set that comes with the service were written down from memory.
 * Whoever acts on one is told so there.
 */
@WholeApplication
class FiguresFromMemoryIntegrationTests {

	private static final String LOOK_UP = "from memory, look it up";

	@Autowired
	private ApplicationContext context;

	private CrawledDay day;

	private Visitor referee;

	private void run() {
		SmallCompetition small = SmallCompetition.running(this.context, 1,
				CompetitionFixtures.aPointsEvent("Senior", 3));
		String name = Crew.add(this.context, Role.REFEREE);
		small.seatInstead(SeatKind.REFEREE, Crew.displayName(name));
		this.referee = Crew.signIn(this.context, name);
		this.day = new CrawledDay(small, this.context);
	}

	@Test
	void saysSoWherePointsAreDeducted() {
		run();
		this.day.small.open(1);
		this.day.call();
		assertThat(
				Crew.visitor(this.context, Role.TECHNICAL).open("/desk/technical/" + this.day.small.segment(1)).text())
			.contains(LOOK_UP);
	}

	@Test
	void saysSoBeforeASignatureAndOnTheResult() {
		run();
		this.day.skateAll();
		this.day.post();
		assertThat(text("/desk/results/" + this.day.small.segment(1) + "/signature?signatory=REFEREE"))
			.contains("written down from memory. Have them looked up in the rulebook before you sign.");
		assertThat(text("/follow/" + this.day.small.competition().slug() + "/" + this.day.small.event().slug() + "/"
				+ this.day.small.event().segments().get(0).slug()))
			.contains("written down from memory and may differ from the rulebook, which decides.");
	}

	private String text(String path) {
		return this.referee.open(path).text();
	}

}
