package rimebook.arrival;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionId;
import rimebook.competition.SegmentView;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.music.Music;
import rimebook.performances.PerformanceStatus;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.rosters.ContactView;
import rimebook.rosters.Contacts;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.EventEligibility;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.RosterView;
import rimebook.rosters.Rosters;
import rimebook.rosters.eligibility.EligibilityRules;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.Crew;
import rimebook.testsupport.Races;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static rimebook.testsupport.SmallCompetition.REFEREE;
import static rimebook.testsupport.SmallCompetition.SECRETARY;

/** The door, through its facade and its pages. */
@WholeApplication
class ArrivalIntegrationTests {

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Arrivals arrivals;

	@Autowired
	private JdbcClient database;

	@Autowired
	private Lineups lineups;

	private SmallCompetition small;

	private @Nullable PerformanceView onIce;

	private CompetitionId competition;

	private EntryView entry;

	private List<RosterView.Place> places;

	private StoredFindings stored;

	@BeforeEach
	void threeTeamsOneWithARoster() {
		this.stored = StoredFindings.since(this.context.getBean(RecordVerification.class));
		this.small = SmallCompetition.running(this.context, 3, 3);
		this.competition = this.small.competition().id();
		this.entry = this.small.entries().get(0);
		this.places = List.of(add("Åsa", PlaceRole.SKATES), add("Bo", PlaceRole.SKATES),
				add("Cleo", PlaceRole.ALTERNATE));
	}

	private RosterView.Place add(String given, PlaceRole role) {
		DraftSkater draft = new DraftSkater(given, "Rime " + UUID.randomUUID().toString().replace("-", ""),
				LocalDate.of(2011, 3, 9), "", this.entry.team().club().id());
		return this.context.getBean(Rosters.class)
			.addNew(this.entry.id(), draft, role, false, "Told at the door.", REFEREE);
	}

	@Test
	void aTickIsTakenBackAndTheTeamIsHereOnceAllWhoSkateAre() {
		assertThat(team().missing()).hasSize(2);
		this.arrivals.note(this.places.get(0).id(), true, SECRETARY);
		this.arrivals.note(this.places.get(1).id(), true, REFEREE);
		assertThat(team().isPresent()).as("without the alternate").isTrue();
		assertThat(team().isDone()).isFalse();
		this.arrivals.note(this.places.get(0).id(), false, REFEREE);
		assertThat(team().missing()).extracting((person) -> person.place().number()).containsExactly(1);
		this.arrivals.noteAll(this.entry.id(), SECRETARY);
		assertThat(team().here()).isEqualTo(3);
		assertThat(rows()).as("who was here already is not noted again").isEqualTo(5);
		this.arrivals.noteAll(this.entry.id(), SECRETARY);
		assertThat(rows()).isEqualTo(5);
	}

	@Test
	void aTeamIsDoneOnceNothingIsMissing() {
		this.arrivals.noteAll(this.entry.id(), SECRETARY);
		Music music = this.context.getBean(Music.class);
		music.onSite(this.small.entries().get(1).id(), this.small.segment(1), true, SECRETARY);
		assertThat(team().withoutMusic()).as("of the other segment no team has handed in any")
			.extracting(SegmentView::id)
			.containsExactly(this.small.segment(1));
		this.small.event()
			.segments()
			.forEach((segment) -> music.onSite(this.entry.id(), segment.id(), true, SECRETARY));
		assertThat(team().isDone()).isFalse();
		this.context.getBean(Contacts.class)
			.add(new Contacts.AddContact(this.entry.id(), ContactView.Kind.EMERGENCY, "Nell Thaw", "040 12345", ""),
					REFEREE);
		assertThat(team().isDone()).isTrue();
		assertThat(this.arrivals.notDone(this.small.event().id()).orElseThrow()).hasSize(2)
			.doesNotContain(this.entry.id());
	}

	@Test
	void twoTabletsThatTickTheSameNoteItOnce() throws Exception {
		RosterView.PlaceId place = this.places.get(0).id();
		Races.both(() -> tick(place, SECRETARY), () -> tick(place, REFEREE));
		assertThat(rows()).isEqualTo(1);
		assertThat(team().here()).isEqualTo(1);
	}

	@Test
	void nobodyOfATeamThatWithdrewIsAwaited() {
		this.context.getBean(Entries.class).withdraw(this.entry.id(), this.entry.version(), "Ill.", SECRETARY);
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.arrivals.note(this.places.get(0).id(), true, SECRETARY))
			.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo("arrival-withdrawn"));
		assertThat(this.arrivals.of(this.competition)).hasSize(2);
	}

	@Test
	void theRecordNamesPlacesAndNobody() {
		this.arrivals.noteAll(this.entry.id(), SECRETARY);
		List<String> lines = this.database
			.sql("select concat(before_text, ' / ', after_text, reason) from record_line where action = ? "
					+ "and subject_id = ?")
			.param("arrival.noted-here")
			.param(this.entry.id().toString())
			.query(String.class)
			.list();
		assertThat(lines).containsExactly("places 1, 2, 3: not here / places 1, 2, 3: here");
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void allTeamsAreAskedForWithTheSameNumberOfQuestions() {
		int few = AskedByThisThread.during(() -> this.arrivals.of(this.competition)).size();
		for (int team = 0; team < 4; team++) {
			this.context.getBean(Entries.class)
				.enter(new EnterTeam(this.small.event().id(), "Club " + UUID.randomUUID(), "Town", "Team " + team, "",
						"Came late."), SECRETARY);
		}
		assertThat(AskedByThisThread.during(() -> this.arrivals.of(this.competition))).hasSize(few);
		assertThat(few).isLessThan(14);
	}

	@Test
	void aTeamIsFoundByThreeLettersAndTickedOnATablet() {
		this.context.getBean(Entries.class)
			.enter(new EnterTeam(this.small.event().id(), "Club Hämäläinen", "Town", "Lumikot", "", "Came late."),
					SECRETARY);
		Visitor door = Crew.visitor(this.context, Role.SECRETARY);
		Visitor.Page found = door.open("/desk/arrival/" + this.competition + "?q=HAMa");
		assertThat(found.document().select("#found tbody th a").eachText()).containsExactly("Lumikot");
		assertThat(door.open("/desk/arrival/" + this.competition + "/found?q=zzz").text())
			.contains("No team or club has “zzz” in its name.");
		assertThat(door.open("/desk/arrival/" + this.competition + "?q=lu").document().select("#found tbody tr"))
			.hasSize(4);
		Visitor.Page page = door.open("/desk/arrival/entry/" + this.entry.id());
		assertThat(page.text()).contains("0 of 3 are here", "2 who skate are not here")
			.doesNotContain("No music was handed in for");
		String live = page.document().selectFirst("#live").attr("hx-get");
		assertThat(door.open(live).status()).isEqualTo(204);
		Visitor.Page ticked = page.submit("tbody form", Map.of());
		assertThat(ticked.text()).contains("1 of 3 are here", "1 who skates is not here");
		assertThat(door.open(live).text()).as("the other tablet").contains("1 of 3 are here");
		Element back = ticked.document().selectFirst("tbody form");
		assertThat(back.text()).contains("Is not here", "Åsa");
		assertThat(ticked.submit("tbody form", Map.of()).text()).contains("0 of 3 are here");
		assertThat(door.open("/desk/arrival/entry/" + this.entry.id()).press("form[action$='/all']").text())
			.contains("3 of 3 are here", "Everybody on the roster is noted as here.");
	}

	@Test
	void theStandShowsWhatIsNotDoneOnceSomebodyKeepsTheDoor() {
		this.small.open(1);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String stand = "/desk/stand/" + this.small.segment(1);
		assertThat(referee.open(stand).text()).doesNotContain("missing at the door");
		this.arrivals.note(this.places.get(0).id(), true, SECRETARY);
		assertThat(referee.open(stand).document().select("a[href*='/desk/arrival/entry/']")).hasSize(3);
		assertThat(Crew.visitor(this.context, Role.ANNOUNCER).open("/desk/arrival/entry/" + this.entry.id()).status())
			.isEqualTo(403);
	}

	@Test
	void theStandSaysWhereATeamIsTooFewAndWhatMayFollow() {
		this.context.getBean(EventEligibility.class)
			.set(new EventEligibility.SetRules(this.small.event().id(), "",
					new EligibilityRules(new EligibilityRules.Size(2, null, null, null), EligibilityRules.NONE.ages(),
							EligibilityRules.NONE.sharing(), false),
					"Each element is lowered by one level.", null, -1), SECRETARY);
		this.small.open(1);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String stand = "/desk/stand/" + this.small.segment(1);
		assertThat(tooFew()).as("two skate; of teams without a roster nobody knows").isEmpty();
		assertThat(referee.open(stand).text()).doesNotContain("too few people");
		this.arrivals.note(this.places.get(1).id(), true, SECRETARY);
		assertThat(tooFew()).containsOnlyKeys(this.entry.id());
		assertThat(tooFew().get(this.entry.id()).skating()).as("one is missed at the door").isEqualTo(1);
		assertThat(referee.open(stand).text()).contains("too few people");
		while (!onIce().equals(this.entry.id())) {
			close();
		}
		assertThat(referee.open(stand).document().selectFirst("#few").text()).contains("1 is to skate, at least 2",
				"What may follow: Each element is lowered by one level.", "the rulebook in force");
		this.arrivals.note(this.places.get(0).id(), true, SECRETARY);
		assertThat(referee.open(stand).document().selectFirst("#few").text()).isEmpty();
	}

	@Test
	void whoWasOnTheIceIsKeptWhateverBecomesOfTheRoster() {
		this.small.open(1);
		while (!onIce().equals(this.entry.id())) {
			close();
		}
		LineupView first = this.lineups.of(this.entry.id()).get(0);
		assertThat(first.people()).extracting((person) -> person.place().number()).containsExactly(1, 2);
		assertThat(first.people().get(0).name()).startsWith("Åsa");
		Rosters rosters = this.context.getBean(Rosters.class);
		rosters.stepIn(this.places.get(2).id(), this.places.get(2).version(), this.places.get(0).id(),
				this.places.get(0).version(), "Ill.", REFEREE);
		assertThat(this.lineups.of(this.entry.id()).get(0)).isEqualTo(first);
		Visitor referee = Crew.visitor(this.context, Role.REFEREE);
		String otherwise = "/desk/arrival/lineup/" + this.entry.id() + "/" + this.small.segment(1);
		assertThat(
				referee.open("/desk/arrival/entry/" + this.entry.id()).document().select("a[href='" + otherwise + "']"))
			.hasSize(1);
		Visitor.Page form = referee.open(otherwise);
		assertThat(form.submit("form.sheet", Map.of("reason", " ")).text()).contains("Say why it was otherwise.");
		assertThat(form.submit("form.sheet", Map.of("reason", "It was so already.")).text())
			.contains("Who was on the ice is kept.", "2 Bo", "3 Cleo", "It was so already.");
		assertThat(form.submit("form.sheet", Map.of("reason", "Seen before.")).status()).isEqualTo(422);
		assertThat(this.lineups.of(this.entry.id())).singleElement()
			.satisfies((now) -> assertThat(now.people()).extracting((person) -> person.place().number())
				.containsExactly(2, 3));
		assertThat(Crew.visitor(this.context, Role.SECRETARY).open(otherwise).status()).isEqualTo(403);
		assertThat(this.stored.found()).isEmpty();
	}

	private Map<EntryId, TooFew> tooFew() {
		return this.context.getBean(Strength.class).tooFew(this.small.event().id());
	}

	/** Call the next team where nobody is on the ice. */
	private EntryId onIce() {
		this.onIce = (this.onIce != null) ? this.onIce : this.small.callNext(1);
		return this.onIce.entry();
	}

	private void close() {
		PerformanceView gone = Objects.requireNonNull(this.onIce);
		this.context.getBean(SegmentRun.class)
			.end(this.small.now(gone).id(), this.small.now(gone).version(), PerformanceStatus.NOT_FINISHED, "Ill.",
					REFEREE);
		this.onIce = null;
	}

	private boolean tick(RosterView.PlaceId place, Actor actor) {
		this.arrivals.note(place, true, actor);
		return true;
	}

	private CheckIn team() {
		return this.arrivals.of(this.entry.id());
	}

	private int rows() {
		return this.database.sql("select count(*) from arrival_note where entry_id = ?")
			.param(this.entry.id().value())
			.query(Integer.class)
			.single();
	}

}
