package rimebook.rosters;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.entries.EntryView;
import rimebook.managers.TeamsLinks;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** Whom managers wrote down who was known already: the desk is asked, the team is not. */
@WholeApplication
class NamesakesIntegrationTests {

	private static final String HINT = "Perhaps written down twice";

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Namesakes namesakes;

	@Autowired
	private Rosters rosters;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private SmallCompetition day;

	private EntryView team;

	private String family;

	private SkaterView known;

	private SkaterView typed;

	private Visitor manager;

	private Visitor secretary;

	@BeforeEach
	void aManagerTypesSomebodyWhoIsKnown() {
		this.day = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.team = this.day.entries().get(0);
		this.family = "Firn" + UUID.randomUUID().toString().replaceAll("[^a-f]", "");
		EntryView other = this.day.entries().get(1);
		this.known = this.rosters
			.addNew(other.id(),
					new DraftSkater("Aila", this.family, LocalDate.of(2011, 3, 9), "MN-77", other.team().club().id()),
					PlaceRole.SKATES, true, "", SECRETARY)
			.skater();
		this.manager = new Visitor(this.port);
		this.manager.open("/manager")
			.submit("#open", Map.of("token", this.context.getBean(TeamsLinks.class)
				.give(this.day.competition().id(), this.team.id(), SECRETARY)));
		Visitor.Page added = this.manager.open("/manager/roster")
			.submit("form[action$=/roster]",
					Map.of("givenName", "AILA", "familyName", this.family, "birthDate", "2011-03-09"));
		assertThat(added.text()).contains("The person is on the roster.").doesNotContain("MN-77", "Team 2", "Club 2");
		this.typed = this.rosters.of(this.team.id()).places().get(0).skater();
		this.secretary = Crew.visitor(this.context, Role.SECRETARY);
	}

	@Test
	void theDeskIsAskedAndTheTeamIsNot() {
		Visitor.Page missing = this.secretary.open("/desk/rosters/" + this.day.competition().id());
		assertThat(missing.text()).contains("1 person may be written down twice");
		Visitor.Page roster = this.secretary.open(missing.document().selectFirst("a[href$='#twice']").attr("href"));
		assertThat(roster.text()).contains(HINT, "somebody of that name of Club 2");
		Visitor.Page both = this.secretary.open(roster.document().selectFirst("a[href$='/same']").attr("href"));
		assertThat(both.text()).contains("Club 2", "MN-77", "They are two people");
		for (String page : List.of("", "/roster", "/roster/" + place().id())) {
			assertThat(this.manager.open("/manager" + page).text()).doesNotContain("MN-77", "Team 2", "Club 2",
					"twice");
		}
	}

	@Test
	void onePersonIsNotAskedAboutAnyMore() {
		assertThat(pairs()).hasSize(1);
		both().submit("form[action$=/same]", Map.of("other", chosen(both()), "reason", "Typed by the team."));
		assertThat(pairs()).isEmpty();
		assertThat(place().skater().id()).isEqualTo(this.known.id());
		assertThat(roster().text()).doesNotContain(HINT);
	}

	@Test
	void twoPeopleAreNotAskedAboutUntilThatIsTakenBack() {
		Visitor.Page both = both();
		Visitor.Page late = both();
		Visitor.Page refused = apart(both, "");
		assertThat(refused.status()).isEqualTo(422);
		assertThat(refused.document().selectFirst("input[name=other]").hasAttr("checked")).isTrue();
		assertThat(apart(both, "Not " + this.family + " at all.").text()).contains("name nobody");
		Visitor.Page kept = apart(both, "Born on one day, and of two houses.");
		assertThat(kept.text()).contains("They stay two people", "Said not to be the same person",
				"Born on one day, and of two houses.");
		assertThat(pairs()).isEmpty();
		assertThat(this.namesakes.of(List.of(this.rosters.of(this.day.entries().get(1).id())))).isEmpty();
		assertThat(roster().text()).doesNotContain(HINT);
		assertThat(apart(late, "Once more.").text()).contains("Somebody said already that they are two people.");
		assertThat(lines("skater.kept-apart")).containsExactly("Born on one day, and of two houses.");

		Visitor.Page other = this.secretary.open("/desk/rosters/skater/" + this.known.id() + "/same");
		Visitor.Page otherLate = this.secretary.open("/desk/rosters/skater/" + this.known.id() + "/same");
		assertThat(other.submit("form[action$=/taking-back]", Map.of("reason", "")).status()).isEqualTo(422);
		assertThat(other.submit("form[action$=/taking-back]", Map.of("reason", "The club was asked.")).text())
			.contains("It is open again", "Taken back: The club was asked.");
		assertThat(otherLate.submit("form[action$=/taking-back]", Map.of("reason", "So it was.")).text())
			.contains("was taken back already");
		assertThat(pairs()).hasSize(1);
		assertThat(roster().text()).contains(HINT);
	}

	@Test
	void whatWasChangedSinceIsSeenFirst() {
		Visitor.Page both = both();
		Skaters skaters = this.context.getBean(Skaters.class);
		SkaterView now = skaters.skater(this.known.id());
		skaters.change(now.id(), now.version(),
				new DraftSkater("Aila", this.family, LocalDate.of(2011, 3, 10), "MN-77", now.club()), SECRETARY);
		assertThat(apart(both, "They are two.").text()).contains("Somebody else changed");
		assertThat(pairs()).as("born on another day").isEmpty();
	}

	@Test
	void twoTeamsAreLookedAtWithTheSameNumberOfQuestionsAsOne() {
		List<RosterView> one = List.of(this.rosters.of(this.team.id()));
		List<RosterView> both = this.day.entries().stream().map((entry) -> this.rosters.of(entry.id())).toList();
		assertThat(AskedByThisThread.during(() -> this.namesakes.of(both)))
			.hasSameSizeAs(AskedByThisThread.during(() -> this.namesakes.of(one)));
	}

	private RosterView.Place place() {
		return this.rosters.of(this.team.id()).places().get(0);
	}

	private List<Namesakes.Pair> pairs() {
		return this.namesakes.of(List.of(this.rosters.of(this.team.id()))).getOrDefault(this.team.id(), List.of());
	}

	private Visitor.Page roster() {
		return this.secretary.open("/desk/rosters/entry/" + this.team.id());
	}

	private Visitor.Page both() {
		return this.secretary.open("/desk/rosters/skater/" + this.typed.id() + "/same");
	}

	/** Who is known already, as that page shows them. */
	private static String chosen(Visitor.Page both) {
		return both.document().selectFirst("input[name=other]").attr("value");
	}

	private Visitor.Page apart(Visitor.Page both, String reason) {
		String action = "/desk/rosters/skater/" + this.typed.id() + "/apart";
		both.document().selectFirst("form:has(input[name=other])").attr("action", action);
		return both.submit("form[action$=/apart]", Map.of("other", chosen(both), "reason", reason));
	}

	private List<String> lines(String action) {
		return this.database.sql("select reason from record_line where action = ? and subject_id = ?")
			.params(action, this.typed.id().toString())
			.query(String.class)
			.list();
	}

}
