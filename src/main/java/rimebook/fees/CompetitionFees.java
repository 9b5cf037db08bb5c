package rimebook.fees;

import java.util.Currency;
import java.util.List;
import java.util.function.Function;

import rimebook.competition.CompetitionView;
import rimebook.fees.reckoning.Balance;
import rimebook.fees.reckoning.Money;

/**
 * How all clubs stand with a competition.
 *
 * @param clubs by name; none while nothing is charged
 */
public record CompetitionFees(CompetitionView competition, RulesView rules, List<ClubAccount> clubs) {

	public CompetitionFees {
		clubs = List.copyOf(clubs);
	}

	/** How many teams owe something else by now than the ledger says. */
	public long unsettled() {
		return this.clubs.stream()
			.flatMap((club) -> club.teams().stream())
			.filter(ClubAccount.TeamFees::isUnsettled)
			.count();
	}

	/**
	 * Each column added up by itself: what one club has too much pays for no other.
	 * @throws NullPointerException while nothing is charged
	 */
	public Totals totals() {
		Currency currency = this.rules.paidIn();
		return new Totals(sum(Balance::owed, currency), sum(Balance::waived, currency),
				sum(Balance::received, currency), sum(Balance::open, currency), sum(Balance::credit, currency));
	}

	private Money sum(Function<Balance, Money> column, Currency currency) {
		return this.clubs.stream()
			.map((club) -> column.apply(club.balance()))
			.reduce(Money.none(currency), Money::plus);
	}

	/** Sums over all clubs. */
	public record Totals(Money owed, Money waived, Money received, Money open, Money credit) {
	}

}
