package rimebook.rosters;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.web.client.RestClient;

import rimebook.audit.RecordVerification;
import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.entries.PrintedNames;
import rimebook.rosters.eligibility.EligibilityRules;
import rimebook.rosters.eligibility.Rule;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.RimebookException;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.awaitility.Awaitility.await;

/** Rosters through their facades, and what the record says of them. */
@WholeApplication
class RostersIntegrationTests {

	private static final Actor SECRETARY = SmallCompetition.SECRETARY;

	private static final Actor REFEREE = SmallCompetition.REFEREE;

	private static final LocalDate BORN = LocalDate.of(2011, 3, 9);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Skaters skaters;

	@Autowired
	private Rosters rosters;

	@Autowired
	private Contacts contacts;

	@Autowired
	private EventEligibility eligibility;

	@Autowired
	private Waivers waivers;

	@Autowired
	private RosterCheck check;

	@Autowired
	private RecordVerification record;

	@Autowired
	private PrintedNames printed;

	@Autowired
	private Retention retention;

	@Autowired
	private RetentionWatch watch;

	@Autowired
	private JdbcClient database;

	@LocalServerPort
	private int port;

	private SmallCompetition small;

	private EntryId entry;

	private ClubView.Id club;

	private StoredFindings stored;

	@BeforeEach
	void enterTwoTeams() {
		this.stored = StoredFindings.since(this.record);
		this.small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.entry = this.small.entries().get(0).id();
		this.club = this.small.entries().get(0).team().club().id();
	}

	@Test
	void theRecordTellsNothingOfAPersonAndStaysWholeWithoutThem() {
		long before = this.record.head().lines();
		String family = "Nimmerfrost" + UUID.randomUUID().toString().replaceAll("[^a-f]", "");
		DraftSkater draft = new DraftSkater("Quillan", family, BORN, "MN-48213", this.club);
		RosterView.Place place = this.rosters.addNew(this.entry, draft, PlaceRole.SKATES, false, "", SECRETARY);
		SkaterView.Id id = place.skater().id();
		SkaterView changed = this.skaters.change(id, place.skater().version(),
				new DraftSkater("Quillan", family, BORN.plusDays(1), "MN-48213", this.club), SECRETARY);
		SkaterView agreed = this.skaters.agree(id, changed.version(), "Ottoline Guardwell", LocalDate.of(2027, 1, 4),
				SECRETARY);
		this.contacts.add(new Contacts.AddContact(this.entry, ContactView.Kind.EMERGENCY, "Peregrine Callme",
				"+358 40 7654321", "peregrine@example.org"), SECRETARY);
		this.skaters.erase(id, agreed.version(), "Asked for in a letter of January.", SECRETARY);

		String lines = String.join("\n", this.database.sql("""
				select concat(subject, ' ', action, ' ', before_text, ' ', after_text, ' ', reason) from record_line
				where number > ? order by number""").param(before).query(String.class).list());
		assertThat(lines)
			.contains("skater.added", "skater.changed", "birth date; commitment", "skater.agreed", "skater.deleted",
					"roster-place.taken", "roster.contact-added")
			.doesNotContain(family, "Quillan", "2011", "MN-48213", "Ottoline", "Peregrine", "7654321", "example.org");
		assertThat(this.record.verify().isWhole()).isTrue();
		assertThat(this.stored.found()).isEmpty();
		SkaterView gone = this.skaters.skater(id);
		assertThat(gone.isErased()).isTrue();
		assertThat(gone.name()).isEmpty();
		assertThat(this.database.sql("select salt from skater where id = ?")
			.param(id.value())
			.query(String.class)
			.single()).isEmpty();
		assertThat(this.rosters.of(this.entry).present()).hasSize(1);
		refused("skater-deleted", () -> this.skaters.agree(id, gone.version(), "", BORN, SECRETARY),
				() -> this.rosters.add(this.small.entries().get(1).id(), id, PlaceRole.SKATES, "", SECRETARY));
	}

	/** Whoever has the row can tell that the line is of it, and that a change is not. */
	@Test
	void whatIsStoredOfAPersonIsAttested() {
		SkaterView skater = this.skaters.add(draft("Alder"), SECRETARY);
		String told = this.database.sql("""
				select after_text from record_line where subject = 'skater' and subject_id = ? order by number desc
				fetch first 1 row only""").param(skater.id().toString()).query(String.class).single();
		String salt = this.database.sql("select salt from skater where id = ?")
			.param(skater.id().value())
			.query(String.class)
			.single();
		SkaterView.Facts facts = skater.facts();
		assertThat(told).isEqualTo("commitment " + Commitment.of(salt, facts.givenName(), facts.familyName(),
				BORN.toString(), facts.membershipNumber(), this.club.toString(), "no", "", ""));
		this.database.sql("update skater set birth_date = ? where id = ?")
			.params(LocalDate.of(2010, 3, 9), skater.id().value())
			.update();
		assertThat(this.stored.found().toString()).contains(skater.id().toString());
		this.database.sql("update skater set birth_date = ? where id = ?").params(BORN, skater.id().value()).update();
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void anAlternateStepsInForWhoLeaves() {
		RosterView.Place first = add("Alder", PlaceRole.SKATES);
		RosterView.Place second = add("Birch", PlaceRole.ALTERNATE);
		refused("not-an-alternate",
				() -> this.rosters.stepIn(first.id(), first.version(), second.id(), second.version(), "", SECRETARY));
		RosterView.Place in = this.rosters.stepIn(second.id(), second.version(), first.id(), first.version(),
				"A broken boot.", SECRETARY);
		RosterView roster = this.rosters.of(this.entry);
		assertThat(in.insteadOf()).isEqualTo(first.number());
		assertThat(roster.onIce()).extracting(RosterView.Place::id).containsExactly(second.id());
		assertThat(roster.gone()).extracting(RosterView.Place::id).containsExactly(first.id());
		refused("stale-version",
				() -> this.rosters.change(second.id(), second.version(), PlaceRole.LEFT, "", SECRETARY));
		refused("on-the-roster",
				() -> this.rosters.add(this.entry, second.skater().id(), PlaceRole.SKATES, "", SECRETARY));
		RosterView.Place back = this.rosters.add(this.entry, first.skater().id(), PlaceRole.ALTERNATE, "", SECRETARY);
		assertThat(back.number()).isEqualTo(first.number());
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void whoMayChangeARosterDependsOnTheDay() {
		set(EligibilityRules.NONE, Instant.parse("2020-01-01T00:00:00Z"), -1);
		refused("roster-reason-missing", () -> add("Alder", PlaceRole.SKATES));
		SkaterView alder = this.skaters.add(draft("Alder"), SECRETARY);
		refused("reason-personal", () -> this.rosters.add(this.entry, alder.id(), PlaceRole.SKATES,
				alder.facts().familyName() + " was forgotten.", SECRETARY));
		RosterView.Place place = this.rosters.add(this.entry, alder.id(), PlaceRole.SKATES, "Forgotten on the list.",
				SECRETARY);
		this.small.move(CompetitionState.ENTRIES_CLOSED);
		this.small.move(CompetitionState.RUNNING);
		refused("roster-referees",
				() -> this.rosters.change(place.id(), place.version(), PlaceRole.LEFT, "Ill.", SECRETARY));
		refused("roster-reason-missing",
				() -> this.rosters.change(place.id(), place.version(), PlaceRole.LEFT, " ", REFEREE));
		assertThat(this.rosters.change(place.id(), place.version(), PlaceRole.LEFT, "Ill.", REFEREE).role())
			.isEqualTo(PlaceRole.LEFT);
	}

	@Test
	void aWaiverNeedsAReasonAndIsTakenBackWithOne() {
		RosterView.Place alder = add("Alder", PlaceRole.SKATES);
		set(thirteen(), null, -1);
		TeamCheck.Checked found = this.check.of(this.entry).open().get(0);
		assertThat(found.finding().rule()).isEqualTo(Rule.MEMBERSHIP_NUMBER);
		assertThat(found.place()).isEqualTo(alder.id());
		refused("field-missing", () -> this.waivers
			.waive(new Waivers.Waive(this.entry, Rule.MEMBERSHIP_NUMBER, alder.id(), " "), REFEREE));
		Waivers.Waive order = new Waivers.Waive(this.entry, Rule.MEMBERSHIP_NUMBER, alder.id(),
				"The number is on its way.");
		WaiverView waiver = this.waivers.waive(order, REFEREE);
		refused("waived-already", () -> this.waivers.waive(order, REFEREE));
		assertThat(this.check.of(this.entry).open()).isEmpty();
		assertThat(this.check.of(this.entry).waived()).hasSize(1);
		this.waivers.takeBack(waiver.id(), waiver.version(), "It never came.", REFEREE);
		assertThat(this.check.of(this.entry).open()).hasSize(1);
		assertThat(this.waivers.of(this.entry)).singleElement().satisfies((one) -> assertThat(one.holds()).isFalse());
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void rulesAreSetAndChangedWithWhatWasThereBefore() {
		RulesView rules = set(thirteen(), null, -1);
		assertThat(this.eligibility.of(this.small.event().id())).isEqualTo(rules);
		assertThat(set(thirteen(), null, rules.version()).version()).isEqualTo(rules.version());
		refused("stale-version", () -> set(EligibilityRules.NONE, null, rules.version() + 1));
		RulesView named = this.eligibility.set(new EventEligibility.SetRules(this.small.event().id(), "adult",
				thirteen(), rules.whenFewer(), null, rules.version()), SECRETARY);
		assertThat(named.copiedFrom()).isEqualTo("adult");
		assertThat(this.stored.found()).as("the same figures under another name").isEmpty();
		assertThat(this.eligibility
			.set(new EventEligibility.SetRules(this.small.event().id(), "", thirteen(), rules.whenFewer(), null,
					named.version()), SECRETARY)
			.inWords()).doesNotContain("copied from");
		refused("field-out-of-range",
				() -> new EventEligibility.SetRules(this.small.event().id(), "",
						new EligibilityRules(new EligibilityRules.Size(16, 8, null, null), EligibilityRules.NONE.ages(),
								EligibilityRules.NONE.sharing(), false),
						"", null, 0));
		Competitions competitions = this.context.getBean(Competitions.class);
		EventView further = competitions.addEvent(this.small.competition().id(),
				CompetitionFixtures.anEvent("Adult", 3), SECRETARY);
		this.eligibility.set(new EventEligibility.SetRules(further.id(), "", thirteen(), "", null, -1), SECRETARY);
		EventView copy = competitions.copyEvent(further.id(), "Adult B", SECRETARY);
		assertThat(this.eligibility.of(copy.id()).rules()).isEqualTo(thirteen());
		assertThatExceptionOfType(ConflictException.class)
			.isThrownBy(() -> this.context.getBean(Cancellations.class).remove(further.id(), SECRETARY));
	}

	@Test
	void aWholeCompetitionIsLookedAtWithTheSameNumberOfQuestions() {
		add("Alder", PlaceRole.SKATES);
		int few = asked(this.small);
		SmallCompetition large = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 9,
				CompetitionFixtures.anEvent("Junior", 3));
		large.entries()
			.forEach((one) -> IntStream.range(0, 3)
				.forEach((i) -> this.rosters.addNew(one.id(), draft("Alder"), PlaceRole.SKATES, false, "", SECRETARY)));
		assertThat(asked(large)).isEqualTo(few);
		assertThat(this.check.of(large.competition().id())).hasSize(9)
			.allSatisfy((team) -> assertThat(team.roster().onIce()).hasSize(3));
	}

	/**
	 * Whatever else is known of somebody, only the name goes out, and only while agreed.
	 */
	@Test
	void everybodySeesTheNamesOfThoseWhoAgreed() {
		RosterView.Place alder = add("Alder", PlaceRole.SKATES);
		add("Birch", PlaceRole.SKATES);
		List<EventId> events = List.of(this.small.event().id());
		int before = this.printed.changes(events);
		assertThat(this.printed.of(this.entry)).isEmpty();
		SkaterView agreed = this.skaters.agree(alder.skater().id(), alder.skater().version(), "Ottoline Guardwell",
				LocalDate.of(2027, 1, 4), SECRETARY);
		assertThat(this.printed.of(this.entry)).containsExactly(alder.skater().name());
		String page = team();
		assertThat(page).contains(alder.skater().name()).doesNotContain("Birch", "Ottoline", "2011");
		int given = this.printed.changes(events);
		assertThat(given).isGreaterThan(before);
		this.skaters.disagree(agreed.id(), agreed.version(), SECRETARY);
		assertThat(this.printed.changes(events)).isGreaterThan(given);
		await().atMost(Duration.ofSeconds(20))
			.untilAsserted(() -> assertThat(team()).doesNotContain(alder.skater().name()));
	}

	@Test
	void whatIsKnownOfPeopleIsDeletedOnItsDay() {
		CompetitionId id = this.small.competition().id();
		SkaterView agreed = add("Alder", PlaceRole.SKATES).skater();
		this.skaters.agree(agreed.id(), agreed.version(), "Ottoline Guardwell", LocalDate.of(2027, 1, 4), SECRETARY);
		SkaterView silent = add("Birch", PlaceRole.SKATES).skater();
		SkaterView elsewhere = add("Cedar", PlaceRole.SKATES).skater();
		SmallCompetition other = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3));
		this.rosters.add(other.entries().get(0).id(), elsewhere.id(), PlaceRole.SKATES, "", SECRETARY);
		this.contacts.add(
				new Contacts.AddContact(this.entry, ContactView.Kind.COACH, "Peregrine Callme", "040 7654321", ""),
				SECRETARY);
		LocalDate last = this.small.competition().facts().lastDay();
		refused("retention-too-early", () -> this.retention.set(id, last, Retention.View.NONE, SECRETARY));
		this.retention.set(id, last.plusDays(1), Retention.View.NONE, SECRETARY);
		this.retention.delete(id);
		assertThat(this.contacts.of(this.entry)).hasSize(1);

		this.database.sql("update roster_retention set delete_on = ? where competition_id = ?")
			.params(LocalDate.of(2020, 1, 1), id.value())
			.update();
		assertThat(this.retention.due()).contains(id);
		this.watch.look();

		assertThat(this.retention.due()).doesNotContain(id);
		assertThat(this.retention.of(id).orElseThrow().deleted()).isEqualTo(new Retention.Deleted(1, 1, 1));
		assertThat(this.contacts.of(this.entry)).isEmpty();
		SkaterView kept = this.skaters.skater(agreed.id());
		assertThat(kept.name()).isEqualTo(agreed.name());
		assertThat(kept.facts().birthDate()).isNull();
		assertThat(kept.consent().guardian()).isEmpty();
		assertThat(this.skaters.skater(silent.id()).isErased()).isTrue();
		assertThat(this.skaters.skater(elsewhere.id()).facts().birthDate()).isEqualTo(BORN);
		assertThat(this.rosters.of(this.entry).onIce()).hasSize(3);
		refused("retention-over", () -> this.retention.set(id, last.plusDays(2),
				this.retention.of(id).orElseThrow().version(), SECRETARY));
		assertThat(this.record.verify().isWhole()).isTrue();
		assertThat(this.stored.found()).isEmpty();
	}

	private String team() {
		return RestClient.create("http://localhost:" + this.port)
			.get()
			.uri("/follow/{competition}/team/{entry}", this.small.competition().slug(), this.entry)
			.retrieve()
			.body(String.class);
	}

	private int asked(SmallCompetition of) {
		return AskedByThisThread.during(() -> this.check.of(of.competition().id())).size();
	}

	private static EligibilityRules thirteen() {
		return new EligibilityRules(EligibilityRules.NONE.size(), EligibilityRules.NONE.ages(),
				EligibilityRules.NONE.sharing(), true);
	}

	private RulesView set(EligibilityRules rules, Instant deadline, int version) {
		return this.eligibility
			.set(new EventEligibility.SetRules(this.small.event().id(), "", rules, "", deadline, version), SECRETARY);
	}

	private RosterView.Place add(String name, PlaceRole role) {
		return this.rosters.addNew(this.entry, draft(name), role, false, "", SECRETARY);
	}

	/** Somebody whose name nobody else has. */
	private DraftSkater draft(String given) {
		return new DraftSkater(given, "Firn " + UUID.randomUUID(), BORN, "", this.club);
	}

	private static void refused(String code, Runnable... acts) {
		for (Runnable act : acts) {
			assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
				.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
		}
	}

}
