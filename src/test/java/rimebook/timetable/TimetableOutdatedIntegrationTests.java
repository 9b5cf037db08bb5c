package rimebook.timetable;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.entries.EventChange;
import rimebook.letters.LetterKind;
import rimebook.letters.Letters;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** What a published timetable, and letters that told it, have no longer as it is. */
@WholeApplication
class TimetableOutdatedIntegrationTests {

	private static final String AGAIN = "Publish the timetable again";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Timetables timetables;

	@Autowired
	private TimetableVersions versions;

	@Autowired
	private Entries entries;

	@Autowired
	private Letters letters;

	@Autowired
	private JdbcClient database;

	private List<SmallCompetition> events;

	private CompetitionId id;

	private Visitor secretary;

	@BeforeEach
	void aTimetableIsPublished() {
		this.events = SmallCompetition.running(this.context, 3,
				List.of(CompetitionFixtures.anEvent("Junior", 3), CompetitionFixtures.anEvent("Senior", 3)));
		this.id = this.events.get(0).competition().id();
		this.timetables.fill(this.id, 0, SECRETARY);
		publish();
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
	}

	@Test
	void withdrawnEnteredAndMovedTeamsAreToldUntilItIsPublishedAgain() {
		assertThat(plan()).doesNotContain(AGAIN);
		assertThat(overview()).doesNotContain("out of date", "other times");
		EntryView gone = team(0, 0);
		EntryView moved = team(0, 1);
		this.entries.withdraw(gone.id(), gone.version(), "Ill.", SECRETARY);
		this.entries.enter(new EnterTeam(this.events.get(1).event().id(), "Club 9", "Town 9", "Team 9", "", "Late."),
				SECRETARY);
		this.context.getBean(EventChange.class)
			.move(new EventChange.Move(moved.id(), moved.version(), this.events.get(1).event().id(), "Wrong event."),
					SECRETARY);
		assertThat(plan()).contains("Since version 1 was published, teams have changed: ",
				gone.team().name() + " withdrew", "Team 9 was entered into Senior",
				moved.team().name() + " went to Senior", AGAIN);
		assertThat(overview()).as("no letter told the times").doesNotContain("out of date");
		publish();
		assertThat(plan()).doesNotContain("teams have changed");
	}

	@Test
	void aWithdrawalThatIsTakenBackIsToldNoMore() {
		EntryView gone = team(0, 0);
		EntryView withdrawn = this.entries.withdraw(gone.id(), gone.version(), "Ill.", SECRETARY);
		assertThat(plan()).contains(gone.team().name() + " withdrew");
		this.entries.reinstate(gone.id(), withdrawn.version(), "Well again.", SECRETARY);
		assertThat(plan()).doesNotContain("teams have changed");
	}

	/** The others come when it was said, so of that there is nothing to publish. */
	@Test
	void whoWithdrawsAfterTheDrawKeepsTheTime() {
		this.events.get(0).draw(1);
		publish();
		EntryView gone = team(0, 0);
		this.entries.withdraw(gone.id(), gone.version(), "Ill.", SECRETARY);
		assertThat(plan()).as("of the second segment").contains(gone.team().name() + " withdrew");
		publish();
		assertThat(plan()).doesNotContain("teams have changed").contains(gone.team().name());
	}

	@Test
	void lettersAreOutOfDateUntilTheTimetableIsPublishedAndTheTeamsAreWrittenToAgain() {
		write(Set.of());
		assertThat(overview()).doesNotContain("out of date", "other times");
		EntryView gone = team(0, 0);
		this.entries.withdraw(gone.id(), gone.version(), "Ill.", SECRETARY);
		this.entries.enter(new EnterTeam(this.events.get(1).event().id(), "Club 9", "Town 9", "Team 9", "", "Late."),
				SECRETARY);
		assertThat(overview()).contains("Letters told the times of a timetable that is out of date.",
				gone.team().name() + " withdrew", "Team 9 was entered into Senior");
		publish();
		assertThat(overview()).doesNotContain("out of date", gone.team().name() + ",")
			.contains("Version 2 of the timetable has other times than the last letters told: ", "Team 9");
		Set<EntryId> last = Set.of(team(1, 3).id());
		write(last);
		assertThat(overview()).contains("Write to these teams again.");
		write(Set.of());
		assertThat(overview()).doesNotContain("out of date", "other times");
	}

	@Test
	void aLetterThatDidNotGoToldNothing() {
		write(Set.of());
		this.database.sql(
				"update letter set state = 'CANCELLED' where sending_id in (select id from letter_sending where competition_id = ?)")
			.param(this.id.value())
			.update();
		EntryView gone = team(0, 0);
		this.entries.withdraw(gone.id(), gone.version(), "Ill.", SECRETARY);
		assertThat(overview()).doesNotContain("out of date");
		assertThat(plan()).contains("withdrew");
	}

	/** A letter on paper about times to these teams, to all where none is named. */
	private void write(Set<EntryId> some) {
		Set<EntryId> all = this.letters.recipients(this.id, LetterKind.TIMETABLE)
			.stream()
			.map((one) -> one.entry().id())
			.collect(Collectors.toSet());
		Letters.Order order = new Letters.Order(this.id, LetterKind.TIMETABLE, some.isEmpty() ? all : some);
		this.letters.print(order, this.letters.preview(order, SECRETARY).seen(), SECRETARY);
	}

	private void publish() {
		this.versions.publish(this.id, this.timetables.plan(this.id).number(), "", SECRETARY);
	}

	private EntryView team(int event, int number) {
		return this.entries.ofEvent(this.events.get(event).event().id()).get(number);
	}

	private String plan() {
		return this.secretary.open("/desk/timetable/" + this.id).text();
	}

	private String overview() {
		return this.secretary.open("/desk/letters/" + this.id).text();
	}

}
