package rimebook.demo;

import java.util.Currency;
import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.fees.ClubAccount;
import rimebook.fees.FeeRules;
import rimebook.fees.Fees;
import rimebook.fees.Ledger;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Terms;
import rimebook.fees.reckoning.Until;

/**
 * Invented fees: some clubs have paid, some have paid a part or too much, some nothing
 * yet.
 */
@Component
@Profile("demo")
class DemoFees {

	private static final Currency EUR = Currency.getInstance("EUR");

	private static final int DAYS_ALL_BACK = 30;

	private static final int DAYS_HALF_BACK = 14;

	private final FeeRules rules;

	private final Fees fees;

	private final Ledger ledger;

	DemoFees(FeeRules rules, Fees fees, Ledger ledger) {
		this.rules = rules;
		this.fees = fees;
		this.ledger = ledger;
	}

	/** Charge fees, less in one event, and let some clubs pay. */
	void charge(CompetitionView competition, EventView cheaper) {
		Terms.Withdrawal withdrawal = new Terms.Withdrawal(before(competition, DAYS_ALL_BACK), 50,
				before(competition, DAYS_HALF_BACK));
		set(competition, null, new Terms(new Terms.Charges(euro(220_00), euro(6_50), euro(60_00)), null, withdrawal));
		set(competition, cheaper.id(), new Terms(new Terms.Charges(euro(150_00), null, null), null, null));
		List<ClubAccount> clubs = this.fees.of(competition.id()).clubs();
		for (int number = 0; number < clubs.size(); number++) {
			pay(competition, clubs.get(number), number);
		}
	}

	private void pay(CompetitionView competition, ClubAccount club, int number) {
		Money owed = club.balance().owed();
		switch (number % 5) {
			case 0, 1 -> this.ledger.pay(order(competition, club, owed, "bank transfer"), DemoCrew.SECRETARY);
			case 2 -> this.ledger.pay(order(competition, club, owed.share(50), "bank transfer, the first half"),
					DemoCrew.SECRETARY);
			case 3 -> tooMuch(competition, club, owed, number);
			default -> {
				// Nothing has come yet.
			}
		}
	}

	private void tooMuch(CompetitionView competition, ClubAccount club, Money owed, int number) {
		this.ledger.pay(order(competition, club, owed.plus(euro(40_00)), "cash at the office"), DemoCrew.SECRETARY);
		if (number > 4) {
			this.ledger.refund(order(competition, club, euro(40_00), "Paid for a practice that was cancelled."),
					DemoCrew.SECRETARY);
		}
		else {
			this.ledger.waive(order(competition, club, euro(25_00), "The club lent its music system."),
					club.teams().get(0).entry().id(), DemoCrew.SECRETARY);
		}
	}

	private Ledger.Book order(CompetitionView competition, ClubAccount club, Money amount, String why) {
		int seen = this.fees.account(competition.id(), club.club().id()).version();
		return new Ledger.Book(competition.id(), club.club().id(), seen, amount, why);
	}

	private void set(CompetitionView competition, @Nullable EventId event, Terms terms) {
		this.rules.set(new FeeRules.SetTerms(competition.id(), event, 0, EUR, terms), DemoCrew.SECRETARY);
	}

	private static Until before(CompetitionView competition, int days) {
		return Until.at(competition.facts().firstDay().minusDays(days).atTime(23, 59, 59), competition.zone());
	}

	private static Money euro(long cents) {
		return new Money(cents, EUR);
	}

}
