package rimebook.rosters;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionState;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Two people who turn out to be one, and people who can be called. */
@WholeApplication
class SamePersonIntegrationTests {

	private static final Actor SECRETARY = SmallCompetition.SECRETARY;

	private static final LocalDate BORN = LocalDate.of(2011, 3, 9);

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Skaters skaters;

	@Autowired
	private Rosters rosters;

	@Autowired
	private SamePerson same;

	@Autowired
	private Contacts contacts;

	@Autowired
	private PeopleSearch search;

	@Autowired
	private RecordVerification record;

	private EntryId first;

	private EntryId second;

	private ClubView.Id club;

	/** So that nobody has the name of somebody of another test. */
	private String family;

	private StoredFindings stored;

	@BeforeEach
	void enterTwoTeams() {
		this.stored = StoredFindings.since(this.record);
		SmallCompetition small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.first = small.entries().get(0).id();
		this.second = small.entries().get(1).id();
		this.club = small.entries().get(0).team().club().id();
		this.family = "Firn" + UUID.randomUUID().toString().replaceAll("[^a-f]", "");
	}

	@Test
	void placesGoToWhoStaysAndComeBack() {
		SkaterView one = add("Aila", BORN);
		SkaterView other = add("Ailla", null);
		RosterView.Place place = this.rosters.add(this.first, one.id(), PlaceRole.SKATES, "", SECRETARY);
		this.rosters.add(this.second, other.id(), PlaceRole.SKATES, "", SECRETARY);
		KeptRoster kept = this.rosters.of(this.first).kept();
		assertThat(this.same.candidates(one.id())).extracting(SkaterView::id).startsWith(other.id());

		SkaterView stays = merge(one, other);
		assertThat(stays.facts().birthDate()).isEqualTo(BORN);
		assertThat(stays.facts().givenName()).isEqualTo("Ailla");
		assertThat(this.rosters.of(stays.id())).hasSize(2);
		assertThat(this.rosters.place(place.id()).skater().id()).isEqualTo(other.id());
		assertThat(this.skaters.all()).extracting(SkaterView::id).contains(other.id()).doesNotContain(one.id());
		assertThat(this.same.alsoWrittenDown(other.id())).extracting(SkaterView::name)
			.containsExactly("Aila " + this.family);
		SkaterView.Id named = kept.places().get(0).skater();
		assertThat(this.skaters.today(List.of(named)).get(named).id()).isEqualTo(other.id());
		SkaterView gone = this.skaters.skater(one.id());
		refused("skater-merged", () -> this.rosters.add(this.second, one.id(), PlaceRole.SKATES, "", SECRETARY),
				() -> this.skaters.agree(gone.id(), gone.version(), "", BORN, SECRETARY), () -> merge(gone, stays));
		refused("skater-has-others", () -> merge(stays, add("Aila", BORN)));
		assertThat(this.stored.found()).isEmpty();

		refused("field-missing", () -> this.same.separate(one.id(), gone.version(), " ", SECRETARY));
		this.same.separate(one.id(), gone.version(), "They are sisters.", SECRETARY);
		assertThat(this.rosters.place(place.id()).skater().id()).isEqualTo(one.id());
		assertThat(this.rosters.of(other.id())).hasSize(1);
		refused("skater-apart", () -> this.same.separate(one.id(), gone.version() + 1, "They are sisters.", SECRETARY));
		assertThat(this.stored.found()).isEmpty();
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	@Test
	void nobodyIsOnARosterTwice() {
		SkaterView one = add("Aila", BORN);
		SkaterView other = add("Ailla", BORN);
		RosterView.Place place = this.rosters.add(this.first, one.id(), PlaceRole.ALTERNATE, "", SECRETARY);
		this.rosters.add(this.first, other.id(), PlaceRole.SKATES, "", SECRETARY);
		refused("skater-twice", () -> merge(one, other));
		refused("skater-themselves", () -> merge(one, one));
		this.rosters.change(place.id(), place.version(), PlaceRole.LEFT, "", SECRETARY);
		merge(one, other);
		assertThat(this.rosters.of(this.first).onIce()).extracting((kept) -> kept.skater().id())
			.containsExactly(other.id());
		assertThat(this.rosters.place(place.id()).skater().id()).isEqualTo(one.id());
	}

	@Test
	void whatWasWrittenDownTwiceIsDeletedTwice() {
		SkaterView one = add("Aila", BORN);
		SkaterView other = add("Ailla", null);
		SkaterView stays = merge(one, other);
		this.skaters.erase(stays.id(), stays.version(), "Asked for in a letter.", SECRETARY);
		assertThat(this.skaters.skater(one.id()).isErased()).isTrue();
		assertThat(this.skaters.skater(one.id()).name()).isEmpty();
		refused("skater-deleted", () -> this.same.separate(one.id(), this.skaters.skater(one.id()).version(),
				"They are sisters.", SECRETARY));
		assertThat(this.stored.found()).isEmpty();
	}

	@Test
	void whoCanBeCalledIsFoundAndTakenOffTheLists() {
		ContactView coach = contact(this.first, ContactView.Kind.COACH, "Nell " + this.family);
		ContactView manager = contact(this.second, ContactView.Kind.MANAGER, "NELL  " + this.family);
		SkaterView skater = add("Aila", BORN);
		PeopleSearch.Found found = this.search.find(this.family.toUpperCase());
		assertThat(found.skaters()).extracting(SkaterView::id).containsExactly(skater.id());
		assertThat(found.contacts()).singleElement().satisfies((one) -> assertThat(one.lists()).isEqualTo(2));
		assertThat(this.search.find("x").skaters()).isEmpty();
		assertThat(this.contacts.called(coach.id())).hasSize(2);
		refused("reason-personal", () -> this.contacts.remove(coach.id(), List.of(coach.id()),
				"Ms " + this.family + " asked.", SECRETARY));
		refused("contacts-none", () -> this.contacts.remove(coach.id(), List.of(), "Asked for.", SECRETARY));
		assertThat(this.contacts.remove(coach.id(), List.of(coach.id()), "Asked for.", SECRETARY)).isEqualTo(1);
		assertThat(this.contacts.of(this.first)).isEmpty();
		assertThat(this.contacts.called(manager.id())).hasSize(1);
		assertThat(this.stored.found()).isEmpty();
	}

	private ContactView contact(EntryId entry, ContactView.Kind kind, String name) {
		return this.contacts.add(new Contacts.AddContact(entry, kind, name, "040 7654321", ""), SECRETARY);
	}

	private SkaterView add(String given, LocalDate born) {
		return this.skaters.add(new DraftSkater(given, this.family, born, "", this.club), SECRETARY);
	}

	private SkaterView merge(SkaterView one, SkaterView other) {
		return this.same.merge(
				new SamePerson.Merge(one.id(), one.version(), other.id(), other.version(), "Written down twice."),
				SECRETARY);
	}

	private static void refused(String code, Runnable... acts) {
		for (Runnable act : acts) {
			assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
				.satisfies((refusal) -> assertThat(refusal.code()).isEqualTo(code));
		}
	}

}
