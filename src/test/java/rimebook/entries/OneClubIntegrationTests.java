package rimebook.entries;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.accounts.Role;
import rimebook.audit.RecordVerification;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.EventId;
import rimebook.fees.FeeRules;
import rimebook.fees.Fees;
import rimebook.fees.Ledger;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Terms;
import rimebook.panels.DraftOfficial;
import rimebook.panels.OfficialView;
import rimebook.panels.Panels;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.SkaterView;
import rimebook.rosters.Skaters;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.testsupport.Crew;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.Visitor;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Clubs that were written down twice, and how clubs are reached. */
@WholeApplication
class OneClubIntegrationTests {

	private static final Actor SECRETARY = SmallCompetition.SECRETARY;

	private static final Currency EUR = Currency.getInstance("EUR");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private OneClub oneClub;

	@Autowired
	private Renaming renaming;

	@Autowired
	private Entries entries;

	@Autowired
	private ClubContacts contacts;

	@Autowired
	private RecordVerification record;

	@Autowired
	private JdbcClient database;

	private final String unique = UUID.randomUUID().toString().substring(0, 8);

	private SmallCompetition small;

	private EntryView short1;

	private EntryView long1;

	private StoredFindings stored;

	@BeforeEach
	void enterTheSameClubTwice() {
		this.stored = StoredFindings.since(this.record);
		this.small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3));
		this.short1 = enter("HB " + this.unique, "Lanterns");
		this.long1 = enter("Harbour Blades " + this.unique, "Embers");
	}

	private EntryView enter(String club, String team) {
		return this.entries.enter(new EnterTeam(this.small.event().id(), club, "Skerrywick", team, "", ""), SECRETARY);
	}

	@Test
	void teamsPeopleFeesAndOfficialsFollowAndComeBack() {
		CompetitionId competition = this.small.competition().id();
		charge(competition);
		Skaters skaters = this.context.getBean(Skaters.class);
		SkaterView skater = skaters.add(new DraftSkater("Aila", "Firn" + this.unique.replaceAll("[^a-f]", "x"),
				LocalDate.of(2011, 3, 9), "", one()), SECRETARY);
		Panels panels = this.context.getBean(Panels.class);
		OfficialView official = panels.register(
				new DraftOfficial("Judge " + this.unique, "HB " + this.unique, "national"), SmallCompetition.REFEREE);
		pay(competition, one(), 30);
		int changes = changes();

		assertThat(this.oneClub.candidates(one())).extracting(ClubView::id).contains(other()).doesNotContain(one());
		OneClub.Preview preview = this.oneClub.preview(one(), other());
		assertThat(preview.teams()).containsExactly("Lanterns");
		assertThat(preview.twice()).isEmpty();
		merge();
		assertThat(this.entries.entry(this.short1.id()).team().club().id()).isEqualTo(other());
		assertThat(this.entries.clubs()).extracting(ClubView::id).contains(other()).doesNotContain(one());
		assertThat(changes()).isGreaterThan(changes);
		assertThat(skaters.skater(skater.id()).club()).isEqualTo(other());
		assertThat(officialClub(panels, official)).isEqualTo("Harbour Blades " + this.unique);
		Fees fees = this.context.getBean(Fees.class);
		assertThat(fees.account(competition, other()).balance().received()).isEqualTo(euro(30));
		assertThat(fees.account(competition, other()).teams()).hasSize(2);
		pay(competition, other(), 5);
		assertThat(enter("HB " + this.unique, "Sparks").team().club().id()).as("found by the name of the one")
			.isEqualTo(other());
		assertThat(this.stored.found()).isEmpty();
		refused("club-merged", () -> this.renaming.change(
				new Renaming.ChangeClub(one(), this.renaming.club(one()).version(), "New name", "Skerrywick", ""),
				SECRETARY));
		refused("club-merged", () -> this.oneClub.merge(order(one(), other()), SECRETARY));
		refused("club-has-others", () -> this.oneClub.merge(order(other(), anotherClub()), SECRETARY));

		int merged = changes();
		this.oneClub.separate(one(), this.renaming.club(one()).version(), "They share the rink.", SECRETARY);
		assertThat(this.entries.entry(this.short1.id()).team().club()).isEqualTo(this.short1.team().club());
		assertThat(this.renaming.club(other()).teams()).containsExactly("Embers", "Sparks");
		assertThat(changes()).isGreaterThan(merged);
		assertThat(skaters.skater(skater.id()).club()).isEqualTo(one());
		assertThat(fees.account(competition, one()).balance().received()).isEqualTo(euro(30));
		assertThat(fees.account(competition, other()).balance().received()).isEqualTo(euro(5));
		refused("club-apart", () -> this.oneClub.separate(one(), 99, "Again.", SECRETARY));
		assertThat(this.stored.found()).isEmpty();
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	@Test
	void whatFollowsIsShownBeforeItIsDone() {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		Visitor.Page page = secretary.open("/desk/entries/club/" + one() + "/same");
		assertThat(page.document().select("form[method=post] [name=reason]")).isEmpty();
		Visitor.Page preview = secretary.open("/desk/entries/club/" + one() + "/same?other=" + other());
		assertThat(preview.text()).contains("These teams go to Harbour Blades " + this.unique, "Lanterns",
				"It can be taken back");
		assertThat(this.renaming.club(one()).other()).isNull();
		String form = "form[action$=/same][method=post]";
		Visitor.Page unsaid = preview.submit(form, Map.of("reason", " "));
		assertThat(unsaid.status()).isEqualTo(422);
		Visitor.Page merged = preview.submit(form, Map.of("reason", "The form had the short name."));
		assertThat(merged.path()).isEqualTo("/desk/entries/club/" + other());
		assertThat(merged.text()).contains("is Harbour Blades " + this.unique + " from now on", "Also written down as");
		assertThat(preview.submit(form, Map.of("reason", "Twice.")).status()).isEqualTo(422);
		Visitor.Page back = secretary.open("/desk/entries/club/" + one() + "/same")
			.submit("form[action$=/separation]", Map.of("reason", "They share the rink."));
		assertThat(back.text()).contains("is a club of its own again");
		assertThat(secretary.open("/desk/entries/clubs").text()).contains("HB " + this.unique);
		Visitor.Page read = Crew.visitor(this.context, Role.REFEREE).open("/desk/entries/club/" + one());
		assertThat(read.document().select("main form")).isEmpty();
	}

	@Test
	void twoTeamsOfANameForbidIt() {
		enter("HB " + this.unique, "Embers");
		assertThat(this.oneClub.preview(one(), other()).twice()).containsExactly("Embers");
		refused("club-team-twice", this::merge);
		refused("club-itself", () -> this.oneClub.merge(order(one(), one()), SECRETARY));
		assertThat(this.entries.entry(this.short1.id()).team().club().id()).isEqualTo(one());
	}

	@Test
	void howAClubIsReachedIsAttestedWithoutBeingToldAndDeletedOnTheDay() {
		ClubContacts.Reach kept = this.contacts.set(one(),
				new ClubContacts.Reach("office@hb.example", "+47 55 12", ClubContacts.Reach.NONE), SECRETARY);
		assertThat(this.contacts.of(one())).isEqualTo(kept);
		refused("stale-version", () -> this.contacts.set(one(), new ClubContacts.Reach("", "112233", 7), SECRETARY));
		refused("field-form", () -> new ClubContacts.Reach("nobody", "", 0));
		refused("field-form", () -> new ClubContacts.Reach("", "twelve", 0));
		assertThat(lines()).noneMatch((line) -> line.contains("office@hb") || line.contains("55 12"));
		assertThat(this.stored.found()).isEmpty();
		this.database.sql("update club_contact set phone = '+47 55 13' where club_id = ?")
			.param(one().value())
			.update();
		assertThat(this.stored.found()).hasSize(1);
		this.database.sql("update club_contact set phone = '+47 55 12' where club_id = ?")
			.param(one().value())
			.update();

		SmallCompetition further = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 1,
				CompetitionFixtures.anEvent("Junior", 3));
		EventId elsewhere = further.event().id();
		this.entries.enter(new EnterTeam(elsewhere, "HB " + this.unique, "Skerrywick", "Lanterns", "", ""), SECRETARY);
		this.contacts.delete(this.small.competition().id(), Actor.system());
		assertThat(this.contacts.of(one())).as("needed for another competition").isEqualTo(kept);
		this.contacts.set(other(), new ClubContacts.Reach("", "112233", ClubContacts.Reach.NONE), SECRETARY);
		this.contacts.delete(this.small.competition().id(), Actor.system());
		assertThat(this.contacts.of(one())).isEqualTo(kept);
		assertThat(this.contacts.of(other())).isEqualTo(ClubContacts.Reach.UNKNOWN);
		this.contacts.set(one(), new ClubContacts.Reach("", "", kept.version()), SECRETARY);
		assertThat(this.contacts.of(one())).isEqualTo(ClubContacts.Reach.UNKNOWN);
		assertThat(this.stored.found()).isEmpty();
		assertThat(this.record.verify().isWhole()).isTrue();
	}

	@Test
	void sectionAndContactAreMendedOnThePage() {
		Visitor secretary = Crew.visitor(this.context, Role.SECRETARY);
		String page = "/desk/entries/club/" + one();
		secretary.open(page).submit("form[action$=" + one() + "]", Map.of("section", "NOR"));
		assertThat(this.renaming.club(one()).section()).isEqualTo("NOR");
		Visitor.Page wrong = secretary.open(page)
			.submit("form[action$=/contact]", Map.of("mail", "nobody", "phone", "+47 55 12"));
		assertThat(wrong.status()).isEqualTo(422);
		assertThat(wrong.document().select("#phone").attr("value")).isEqualTo("+47 55 12");
		Visitor.Page kept = secretary.open(page)
			.submit("form[action$=/contact]", Map.of("mail", "office@hb.example", "phone", "+47 55 12"));
		assertThat(kept.status()).isEqualTo(200);
		assertThat(Crew.visitor(this.context, Role.REFEREE).open(page).text()).contains("office@hb.example");
		assertThat(this.stored.found()).isEmpty();
	}

	private List<String> lines() {
		return this.database.sql("select before_text || after_text || reason from record_line where subject_id = ?")
			.param(one().toString())
			.query(String.class)
			.list();
	}

	private static String officialClub(Panels panels, OfficialView official) {
		return panels.officials()
			.stream()
			.filter((known) -> known.id().equals(official.id()))
			.findFirst()
			.orElseThrow()
			.club();
	}

	private void charge(CompetitionId competition) {
		this.context.getBean(FeeRules.class)
			.set(new FeeRules.SetTerms(competition, null, 0, EUR,
					new Terms(new Terms.Charges(euro(100), null, null), null, null)), SECRETARY);
	}

	private void pay(CompetitionId competition, ClubView.Id club, long amount) {
		int seen = this.context.getBean(Fees.class).account(competition, club).version();
		this.context.getBean(Ledger.class)
			.pay(new Ledger.Book(competition, club, seen, euro(amount), "Cash."), SECRETARY);
	}

	private static Money euro(long amount) {
		return new Money(amount * 100, EUR);
	}

	private int changes() {
		return this.entries.changes(List.of(this.small.event().id()));
	}

	private ClubView merge() {
		return this.oneClub.merge(order(one(), other()), SECRETARY);
	}

	private OneClub.Merge order(ClubView.Id one, ClubView.Id other) {
		return new OneClub.Merge(one, this.renaming.club(one).version(), other, this.renaming.club(other).version(),
				"The form had the short name.");
	}

	private ClubView.Id one() {
		return this.short1.team().club().id();
	}

	private ClubView.Id other() {
		return this.long1.team().club().id();
	}

	private ClubView.Id anotherClub() {
		return enter("Third " + this.unique, "Foghorns").team().club().id();
	}

	private static void refused(String code, Runnable act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::run)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

}
