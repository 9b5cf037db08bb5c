package rimebook.crawl;

import java.util.Currency;
import java.util.List;

import org.springframework.context.ApplicationContext;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionState;
import rimebook.entries.ClubView;
import rimebook.entries.EntryView;
import rimebook.fees.FeeRules;
import rimebook.fees.Fees;
import rimebook.fees.Ledger;
import rimebook.fees.LedgerRowView;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Terms;
import rimebook.testsupport.SmallCompetition;

/** Gives a club an account on which everything was booked that can be. */
final class CrawledFees {

	private static final Currency EUR = Currency.getInstance("EUR");

	private CrawledFees() {
	}

	/** Nothing is written where nothing may change any more. */
	static void write(ApplicationContext context, SmallCompetition small, EntryView entry) {
		CompetitionId competition = small.competition().id();
		Fees fees = context.getBean(Fees.class);
		if (small.competition().state() == CompetitionState.ARCHIVED || fees.of(competition).rules().isGiven()) {
			return;
		}
		Terms terms = new Terms(new Terms.Charges(euro(220), euro(5), euro(60)), null, null);
		FeeRules rules = context.getBean(FeeRules.class);
		rules.set(new FeeRules.SetTerms(competition, null, 0, EUR, terms), SmallCompetition.SECRETARY);
		rules.set(new FeeRules.SetTerms(competition, small.event().id(), 0, EUR, terms), SmallCompetition.SECRETARY);
		Ledger ledger = context.getBean(Ledger.class);
		ClubView.Id club = entry.team().club().id();
		LedgerRowView slip = ledger.pay(order(fees, competition, club, 10), SmallCompetition.SECRETARY);
		ledger.reverse(slip.id(), "A slip.", SmallCompetition.SECRETARY);
		ledger.pay(order(fees, competition, club, 300), SmallCompetition.SECRETARY);
		if (fees.account(competition, club).teams().get(0).waivable().isSome()) {
			ledger.waive(order(fees, competition, club, 1), entry.id(), SmallCompetition.SECRETARY);
		}
		ledger.refund(order(fees, competition, club, 20), SmallCompetition.SECRETARY);
	}

	private static Ledger.Book order(Fees fees, CompetitionId competition, ClubView.Id club, long amount) {
		return new Ledger.Book(competition, club, fees.account(competition, club).version(), euro(amount), "Cash.");
	}

	private static Money euro(long whole) {
		return new Money(whole * 100, EUR);
	}

	/** One booking of each kind of the club of the first of these entries. */
	static List<String> bookings(ApplicationContext context, SmallCompetition small) {
		Fees fees = context.getBean(Fees.class);
		CompetitionId competition = small.competition().id();
		return fees.of(competition)
			.clubs()
			.stream()
			.limit(1)
			.flatMap((club) -> club.rows().stream().limit(3))
			.map((row) -> row.id().toString())
			.toList();
	}

}
