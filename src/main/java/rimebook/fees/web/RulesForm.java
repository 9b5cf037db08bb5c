package rimebook.fees.web;

import java.time.ZoneId;
import java.util.Currency;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.EventId;
import rimebook.fees.FeeRules;
import rimebook.fees.RulesView;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Terms;
import rimebook.fees.reckoning.Until;

/**
 * What is charged, as typed; empty where nothing is said.
 *
 * @param currency its code; left out for an event, which has that of its competition
 * @param lateAfter day and time at the rink, as the other terms
 * @param shareBack in percent
 */
record RulesForm(@Nullable String currency, @Nullable String perTeam, @Nullable String perSkater,
		@Nullable String lateSurcharge, @Nullable String lateAfter, @Nullable String allBackUntil,
		@Nullable String shareBack, @Nullable String shareUntil, @Nullable Integer version) {

	static RulesForm of(RulesView.Stated stated, @Nullable Currency currency, ZoneId zone) {
		Terms.Charges charges = stated.terms().charges();
		Terms.Withdrawal withdrawal = stated.terms().withdrawal();
		Until allBack = (withdrawal != null) ? withdrawal.allBack() : null;
		Until shareUntil = (withdrawal != null) ? withdrawal.shareUntil() : null;
		return new RulesForm((currency != null) ? currency.getCurrencyCode() : "", plain(charges.perTeam()),
				plain(charges.perSkater()), plain(charges.late()), at(stated.terms().lateAfter(), zone),
				at(allBack, zone),
				(withdrawal != null && withdrawal.share() > 0) ? String.valueOf(withdrawal.share()) : "",
				at(shareUntil, zone), stated.number());
	}

	private static String plain(@Nullable Money amount) {
		return (amount != null) ? amount.plain() : "";
	}

	private static String at(@Nullable Until until, ZoneId zone) {
		return (until != null) ? until.in(zone).toString() : "";
	}

	FeeRules.SetTerms order(CompetitionView competition, @Nullable EventId event, Currency money) {
		ZoneId zone = competition.zone();
		Until allBack = TypedFees.until("allBackUntil", this.allBackUntil, zone);
		int share = TypedFees.percent("shareBack", this.shareBack);
		Until shareUntil = TypedFees.until("shareUntil", this.shareUntil, zone);
		boolean says = allBack != null || share != 0 || shareUntil != null;
		Terms terms = new Terms(
				new Terms.Charges(TypedFees.amount("perTeam", this.perTeam, money),
						TypedFees.amount("perSkater", this.perSkater, money),
						TypedFees.amount("lateSurcharge", this.lateSurcharge, money)),
				TypedFees.until("lateAfter", this.lateAfter, zone),
				says ? new Terms.Withdrawal(allBack, share, shareUntil) : null);
		return new FeeRules.SetTerms(competition.id(), event, (this.version != null) ? this.version : 0, money, terms);
	}

}
