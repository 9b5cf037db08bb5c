package rimebook.fees.web;

import java.util.Currency;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionId;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.fees.Ledger;
import rimebook.fees.reckoning.Money;
import rimebook.pages.Given;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Something of a club that is to be booked, as typed.
 *
 * @param entry the team, where it is about one
 * @param version of the account that was looked at
 */
record BookingForm(@Nullable String entry, @Nullable String amount, @Nullable String why, @Nullable Integer version) {

	Ledger.Book order(CompetitionId competition, ClubView.Id club, Currency currency) {
		Money money = TypedFees.amount("amount", this.amount, currency);
		if (money == null) {
			throw RuleViolationException.ofField("field-missing", "amount", Sentence.of("shared.field.missing"));
		}
		return new Ledger.Book(competition, club, (this.version != null) ? this.version : 0, money,
				Given.text(this.why));
	}

	EntryId team() {
		return Given.read("entry", this.entry, EntryId::of, Sentence.of("fees.team-missing"));
	}

}
