package rimebook.fees;

import java.time.Instant;
import java.util.Currency;
import java.util.UUID;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Terms;
import rimebook.fees.reckoning.Until;
import rimebook.shared.AppendedRow;

/**
 * What a competition charges, or one of its events: written once, superseded by the next.
 */
@Entity
@Immutable
@Table(name = "fee_terms")
class FeeTerms extends AppendedRow {

	@Column(name = "competition_id")
	private UUID competition;

	/** {@code null} for the competition as a whole. */
	@Column(name = "event_id")
	private @Nullable UUID event;

	private int number;

	private String currency;

	private @Nullable Long perTeam;

	private @Nullable Long perSkater;

	private @Nullable Long lateSurcharge;

	private @Nullable Instant lateAfter;

	private @Nullable Instant allBackUntil;

	private @Nullable Integer shareBack;

	private @Nullable Instant shareUntil;

	private String setBy;

	private Instant setAt;

	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected FeeTerms() {
	}

	FeeTerms(UUID id, int number, FeeRules.SetTerms order, String setBy, Instant now) {
		super(id);
		Terms terms = order.terms();
		Terms.Withdrawal withdrawal = terms.withdrawal();
		this.competition = order.competition().value();
		this.event = (order.event() != null) ? order.event().value() : null;
		this.number = number;
		this.currency = order.currency().getCurrencyCode();
		this.perTeam = minor(terms.charges().perTeam());
		this.perSkater = minor(terms.charges().perSkater());
		this.lateSurcharge = minor(terms.charges().late());
		this.lateAfter = second(terms.lateAfter());
		this.allBackUntil = (withdrawal != null) ? second(withdrawal.allBack()) : null;
		this.shareBack = (withdrawal != null) ? withdrawal.share() : null;
		this.shareUntil = (withdrawal != null) ? second(withdrawal.shareUntil()) : null;
		this.setBy = setBy;
		this.setAt = now;
	}

	private static @Nullable Long minor(@Nullable Money amount) {
		return (amount != null) ? amount.minor() : null;
	}

	private static @Nullable Instant second(@Nullable Until until) {
		return (until != null) ? until.second() : null;
	}

	@Nullable EventId event() {
		return (this.event != null) ? new EventId(this.event) : null;
	}

	int number() {
		return this.number;
	}

	Currency currency() {
		return Currency.getInstance(this.currency);
	}

	RulesView.Stated view() {
		Terms.Withdrawal withdrawal = (this.shareBack != null)
				? new Terms.Withdrawal(until(this.allBackUntil), this.shareBack, until(this.shareUntil)) : null;
		return new RulesView.Stated(
				new Terms(new Terms.Charges(money(this.perTeam), money(this.perSkater), money(this.lateSurcharge)),
						until(this.lateAfter), withdrawal),
				this.number);
	}

	private @Nullable Money money(@Nullable Long minor) {
		return (minor != null) ? new Money(minor, currency()) : null;
	}

	private static @Nullable Until until(@Nullable Instant second) {
		return (second != null) ? new Until(second) : null;
	}

}
