package rimebook.live;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.DraftCompetition;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.entries.Renaming;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Open pages hear of everything they show, not of marks alone: an order that is drawn, a
 * team that leaves before anybody skated, a name that is mended, what is cancelled.
 */
@WholeApplication
class MomentReaderIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private MomentReader moments;

	private SmallCompetition day;

	private Moment before;

	@BeforeEach
	void nobodyHasSkated() {
		this.day = SmallCompetition.running(this.context, 3, 3);
		this.before = now();
	}

	@Test
	void tellsWhatThePlanShows() {
		this.day.draw(1);
		assertToldToEverybody();
		CompetitionView competition = this.day.competition();
		this.context.getBean(Competitions.class)
			.change(competition.id(), competition.version(), elsewhere(), SmallCompetition.SECRETARY);
		assertToldToEverybody();
	}

	@Test
	void tellsWhoLeavesAndComesBack() {
		Entries entries = this.context.getBean(Entries.class);
		EntryView entry = this.day.entries().get(0);
		EntryView gone = entries.withdraw(entry.id(), entry.version(), "A fever.", SmallCompetition.SECRETARY);
		assertToldToEverybody();
		entries.reinstate(gone.id(), gone.version(), "It was another team.", SmallCompetition.SECRETARY);
		assertToldToEverybody();
	}

	@Test
	void tellsMendedNames() {
		Renaming renaming = this.context.getBean(Renaming.class);
		EntryView entry = this.day.entries().get(0);
		int team = renaming.team(entry.team().id()).version();
		renaming.change(new Renaming.ChangeTeam(entry.team().id(), team, "Lanterns " + entry.id(), ""),
				SmallCompetition.SECRETARY);
		assertToldToEverybody();
		int club = renaming.club(entry.team().club().id()).version();
		renaming.change(
				new Renaming.ChangeClub(entry.team().club().id(), club, "Beacon " + entry.id(), "Skerrywick", ""),
				SmallCompetition.SECRETARY);
		assertToldToEverybody();
	}

	@Test
	void tellsWhatIsCancelledAndBroughtBack() {
		Cancellations cancellations = this.context.getBean(Cancellations.class);
		List<Runnable> acts = new ArrayList<>();
		acts.add(() -> cancellations.cancel(this.day.segment(2), "No ice.", SmallCompetition.SECRETARY));
		acts.add(() -> cancellations.bringBack(this.day.segment(2), SmallCompetition.SECRETARY));
		acts.add(() -> cancellations.cancel(this.day.event().id(), "No ice.", SmallCompetition.SECRETARY));
		acts.add(() -> cancellations.bringBack(this.day.event().id(), SmallCompetition.SECRETARY));
		acts.forEach((act) -> {
			act.run();
			assertToldToEverybody();
		});
	}

	@Test
	void saysNothingWhenNothingHappened() {
		assertThat(now()).isEqualTo(this.before);
	}

	private static DraftCompetition elsewhere() {
		return CompetitionFixtures.aCompetition("Frost Trial, moved to the small rink");
	}

	/** Whoever knows the moment before is told, and keeps the one that is now. */
	private void assertToldToEverybody() {
		Moment now = now();
		assertThat(now.since(this.before)).extracting(Signal::id)
			.containsExactly(this.day.segment(1).toString(), this.day.segment(2).toString());
		this.before = now;
	}

	private Moment now() {
		return this.moments.read(this.day.competition().slug(), null);
	}

}
