package rimebook.fees;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

import rimebook.audit.RecordVerification;
import rimebook.competition.Cancellations;
import rimebook.competition.CompetitionFixtures;
import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.entries.ClubView;
import rimebook.entries.EnterTeam;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.fees.reckoning.BookingKind;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Terms;
import rimebook.fees.reckoning.Until;
import rimebook.rosters.DraftSkater;
import rimebook.rosters.PlaceRole;
import rimebook.rosters.Rosters;
import rimebook.shared.Actor;
import rimebook.shared.RimebookException;
import rimebook.testsupport.AskedByThisThread;
import rimebook.testsupport.SmallCompetition;
import rimebook.testsupport.StoredFindings;
import rimebook.testsupport.WholeApplication;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Fees through their facades, and what the record says of them. */
@WholeApplication
class FeesIntegrationTests {

	private static final Actor SECRETARY = SmallCompetition.SECRETARY;

	private static final Currency EUR = Currency.getInstance("EUR");

	@Autowired
	private ApplicationContext context;

	@Autowired
	private Fees fees;

	@Autowired
	private FeeRules rules;

	@Autowired
	private Ledger ledger;

	@Autowired
	private FeeStatement statement;

	@Autowired
	private Entries entries;

	@Autowired
	private RecordVerification record;

	@Autowired
	private JdbcClient database;

	private SmallCompetition small;

	private CompetitionId competition;

	private EntryView entry;

	private ClubView.Id club;

	private StoredFindings stored;

	@BeforeEach
	void enterTwoTeams() {
		this.stored = StoredFindings.since(this.record);
		this.small = SmallCompetition.upTo(CompetitionState.ENTRIES_OPEN, this.context, 2,
				CompetitionFixtures.anEvent("Junior", 3));
		this.competition = this.small.competition().id();
		this.entry = this.small.entries().get(0);
		this.club = this.entry.team().club().id();
	}

	@Test
	void whatIsOwedFollowsFromEntries() {
		set(null, 0, terms(200_00, 5_00, 50_00));
		assertThat(owed()).isEqualTo(euro(200_00));
		String family = "Hoarfield " + UUID.randomUUID().toString().replace("-", "");
		this.context.getBean(Rosters.class)
			.addNew(this.entry.id(), new DraftSkater("Aila", family, LocalDate.of(2011, 3, 9), "", this.club),
					PlaceRole.SKATES, false, "", SECRETARY);
		assertThat(owed()).as("of a roster nobody hears").isEqualTo(euro(200_00));
		assertThat(this.fees.of(this.competition).unsettled()).isEqualTo(1);
		assertThat(this.ledger.settle(this.competition, SECRETARY)).isEqualTo(1);
		assertThat(this.ledger.settle(this.competition, SECRETARY)).isZero();
		assertThat(owed()).isEqualTo(euro(205_00));

		EntryView left = this.entries.withdraw(this.entry.id(), this.entry.version(), "No ice.", SECRETARY);
		assertThat(owed()).as("all of it comes back").isEqualTo(euro(0));
		EntryView back = this.entries.reinstate(left.id(), left.version(), "They found ice.", SECRETARY);
		assertThat(owed()).isEqualTo(euro(205_00));
		this.entries.withdraw(back.id(), back.version(), "No ice after all.", SECRETARY);
		this.small.move(CompetitionState.ENTRIES_CLOSED);
		this.entries.enter(new EnterTeam(this.small.event().id(), this.entry.team().club().name(),
				this.entry.team().club().town(), this.entry.team().name(), "", "They have ice again."), SECRETARY);
		assertThat(owed()).as("entered again, late").isEqualTo(euro(255_00));
		assertThat(account().rows()).extracting(LedgerRowView::amount)
			.containsExactly(euro(200_00), euro(5_00), euro(-205_00), euro(205_00), euro(-205_00), euro(255_00));
		assertThat(account().rows()).extracting(LedgerRowView::number).containsExactly(1, 2, 3, 4, 5, 6);
	}

	@Test
	void aTeamThatComesLaterAndACancelledEventAreSettledAtOnce() {
		set(null, 0, terms(100_00, null, null));
		this.entries.enter(new EnterTeam(this.small.event().id(), this.entry.team().club().name(),
				this.entry.team().club().town(), "Second " + UUID.randomUUID(), "", ""), SECRETARY);
		assertThat(account().balance().owed()).isEqualTo(euro(200_00));
		Cancellations cancellations = this.context.getBean(Cancellations.class);
		cancellations.cancel(this.small.event().id(), "Too few teams.", SECRETARY);
		assertThat(account().balance().owed()).isEqualTo(euro(0));
		cancellations.bringBack(this.small.event().id(), SECRETARY);
		assertThat(account().balance().owed()).isEqualTo(euro(200_00));
	}

	@Test
	void anEventChargesOfItsOwnAndAChangeIsSettledAtOnce() {
		refused("fees-not-set", () -> set(this.small.event().id(), 0, terms(80_00, null, null)));
		set(null, 0, terms(200_00, null, null));
		RulesView own = set(this.small.event().id(), 0, terms(80_00, null, null));
		assertThat(owed()).isEqualTo(euro(80_00));
		set(null, own.defaults().number(), terms(300_00, null, null));
		assertThat(owed()).isEqualTo(euro(80_00));
		set(this.small.event().id(), own.own(this.small.event().id()).number(), Terms.NONE);
		assertThat(owed()).isEqualTo(euro(300_00));
		refused("stale-version", () -> set(null, 1, terms(400_00, null, null)));
		Cancellations cancellations = this.context.getBean(Cancellations.class);
		refused("removal-refused", () -> {
			cancellations.remove(this.small.event().id(), SECRETARY);
			return null;
		});
	}

	@Test
	void theCurrencyStaysOnceAmountsAreWrittenDown() {
		RulesView set = set(null, 0, Terms.NONE);
		Terms yen = new Terms(new Terms.Charges(new Money(30_000, Currency.getInstance("JPY")), null, null), null,
				null);
		RulesView other = this.rules.set(new FeeRules.SetTerms(this.competition, null, set.defaults().number(),
				Currency.getInstance("JPY"), yen), SECRETARY);
		assertThat(owed()).hasToString("30000 JPY");
		refused("currency-in-use", () -> set(null, other.defaults().number(), Terms.NONE));
	}

	@Test
	void moneyIsBookedAndEachBookingIsTakenBackByAFurtherRow() {
		set(null, 0, terms(200_00, null, null));
		LedgerRowView paid = this.ledger.pay(order(250_00, "bank transfer of 12 January"), SECRETARY);
		assertThat(account().balance().credit()).isEqualTo(euro(50_00));
		LedgerRowView waived = this.ledger.waive(order(20_00, "Helped at the rink."), this.entry.id(), SECRETARY);
		assertThat(account().balance().credit()).isEqualTo(euro(70_00));
		LedgerRowView refunded = this.ledger.refund(order(70_00, "Paid too much."), SECRETARY);
		assertThat(account().balance().credit()).isEqualTo(euro(0));
		refused("refund-rests-on-it", () -> this.ledger.reverse(paid.id(), "A slip.", SECRETARY));
		this.ledger.reverse(refunded.id(), "A slip.", SECRETARY);
		this.ledger.reverse(waived.id(), "A slip.", SECRETARY);
		LedgerRowView back = this.ledger.reverse(paid.id(), "The bank took it back.", SECRETARY);
		assertThat(account().balance().open()).isEqualTo(euro(200_00));
		assertThat(account().rows()).hasSize(7).filteredOn(LedgerRowView::isReversible).isEmpty();
		refused("booking-reversed", () -> this.ledger.reverse(paid.id(), "Again.", SECRETARY));
		refused("booking-follows", () -> this.ledger.reverse(back.id(), "Again.", SECRETARY));
		refused("booking-follows", () -> this.ledger.reverse(account().rows().get(0).id(), "Why not.", SECRETARY));
	}

	@Test
	void whatCannotBeIsRefusedAndNothingIsWritten() {
		refused("fees-not-set",
				() -> this.ledger.pay(new Ledger.Book(this.competition, this.club, 0, euro(1), "cash"), SECRETARY));
		set(null, 0, terms(200_00, null, null));
		int rows = account().rows().size();
		refused("field-out-of-range", () -> order(0, "cash"));
		refused("field-missing", () -> order(1, " "));
		refused("field-too-long", () -> order(1, "x".repeat(501)));
		refused("refund-too-large", () -> this.ledger.refund(order(1, "Why not."), SECRETARY));
		refused("waiver-too-large", () -> this.ledger.waive(order(200_01, "Why not."), this.entry.id(), SECRETARY));
		refused("entry-not-found",
				() -> this.ledger.waive(order(1, "Another club's."), this.small.entries().get(1).id(), SECRETARY));
		refused("stale-version", () -> this.ledger
			.pay(new Ledger.Book(this.competition, this.club, rows - 1, euro(1), "cash"), SECRETARY));
		refused("club-not-found", () -> this.ledger
			.pay(new Ledger.Book(this.competition, new ClubView.Id(UUID.randomUUID()), 0, euro(1), "cash"), SECRETARY));
		assertThat(account().rows()).hasSize(rows);
		assertThat(this.small.competition().state()).isEqualTo(CompetitionState.ENTRIES_OPEN);
	}

	@Test
	void moneyStillComesOnceTheCompetitionRunsAndNotOnceItIsArchived() {
		set(null, 0, terms(200_00, null, null));
		this.small.move(CompetitionState.ENTRIES_CLOSED);
		this.small.move(CompetitionState.RUNNING);
		this.ledger.pay(order(1_00, "cash"), SECRETARY);
		Competitions competitions = this.context.getBean(Competitions.class);
		this.context.getBean(Cancellations.class).cancel(this.small.event().id(), "No ice.", SECRETARY);
		this.small.move(CompetitionState.FINAL);
		this.ledger.pay(order(2_00, "cash"), SECRETARY);
		this.small.move(CompetitionState.ARCHIVED);
		refused("fees-archived", () -> this.ledger.pay(order(3_00, "cash"), SECRETARY));
		assertThat(competitions.competition(this.competition).state()).isEqualTo(CompetitionState.ARCHIVED);
	}

	@Test
	void theLedgerIsOnTheRecordAndAmountsThatAreChangedAreFound() {
		set(null, 0, terms(200_00, null, null));
		LedgerRowView paid = this.ledger.pay(order(20_00, "cash"), SECRETARY);
		assertThat(this.record.verify().isWhole()).isTrue();
		assertThat(this.stored.found()).isEmpty();
		List<String> lines = this.database
			.sql("select concat(action, ': ', after_text, '; ', reason) from record_line where subject_id = ?")
			.param(paid.id().toString())
			.query(String.class)
			.list();
		assertThat(lines).singleElement().asString().startsWith("fee.paid: ").endsWith(": paid 20.00 EUR; cash");
		for (String change : List.of("update fee_ledger set amount = 1 where id = ?",
				"delete from fee_ledger where id = ?")) {
			assertThatExceptionOfType(DataAccessException.class)
				.isThrownBy(() -> this.database.sql(change).param(paid.id().value()).update());
		}
	}

	@Test
	void theStatementAsATableHasEveryRowAndWhatIsOpen() {
		set(null, 0, terms(200_00, null, null));
		this.ledger.pay(order(150_00, "=cash"), SECRETARY);
		assertThat(this.statement.csv(this.competition, this.club).lines()).hasSize(4)
			.anySatisfy((line) -> assertThat(line).contains(",owed,Junior,Team 1,200.00,EUR,"))
			.anySatisfy((line) -> assertThat(line).endsWith(",paid,,,150.00,EUR,'=cash"))
			.last()
			.asString()
			.endsWith(",open,,,50.00,EUR,");
	}

	@Test
	void howAllClubsStandIsAskedWithTheSameNumberOfQuestions() {
		set(null, 0, terms(200_00, null, null));
		int few = AskedByThisThread.during(() -> this.fees.of(this.competition)).size();
		for (int club = 0; club < 6; club++) {
			this.entries.enter(new EnterTeam(this.small.event().id(), "Club " + UUID.randomUUID(), "Town",
					"Team " + UUID.randomUUID(), "", ""), SECRETARY);
		}
		List<CompetitionFees> seen = new ArrayList<>();
		assertThat(AskedByThisThread.during(() -> seen.add(this.fees.of(this.competition)))).hasSize(few);
		assertThat(few).isLessThan(10);
		assertThat(seen.get(0).clubs()).hasSize(8);
		assertThat(seen.get(0).totals().open()).isEqualTo(euro(8 * 200_00));
	}

	private RulesView set(@Nullable EventId event, int seen, Terms terms) {
		return this.rules.set(new FeeRules.SetTerms(this.competition, event, seen, EUR, terms), SECRETARY);
	}

	/** Everything comes back until long after the test. */
	private static Terms terms(long team, @Nullable Integer skater, @Nullable Integer late) {
		return new Terms(
				new Terms.Charges(euro(team), (skater != null) ? euro(skater) : null,
						(late != null) ? euro(late) : null),
				null, new Terms.Withdrawal(
						Until.at(LocalDate.of(2199, 1, 1).atStartOfDay(), ZoneId.of("Europe/Helsinki")), 0, null));
	}

	private Ledger.Book order(long cents, String why) {
		return new Ledger.Book(this.competition, this.club, account().version(), euro(cents), why);
	}

	private ClubAccount account() {
		return this.fees.account(this.competition, this.club);
	}

	private Money owed() {
		ClubAccount.TeamFees team = account().teams()
			.stream()
			.filter((one) -> one.entry().id().equals(this.entry.id()))
			.findFirst()
			.orElseThrow();
		assertThat(account().rows()).filteredOn((row) -> row.kind() == BookingKind.OWED)
			.extracting((row) -> row.amount().minor())
			.allMatch((amount) -> amount != 0);
		return team.owed();
	}

	private static void refused(String code, Callable<?> act) {
		assertThatExceptionOfType(RimebookException.class).isThrownBy(act::call)
			.extracting(RimebookException::code)
			.isEqualTo(code);
	}

	private static Money euro(long cents) {
		return new Money(cents, EUR);
	}

}
