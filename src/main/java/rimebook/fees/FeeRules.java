package rimebook.fees;

import java.util.Currency;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.fees.reckoning.Terms;
import rimebook.shared.Acts;
import rimebook.shared.Actor;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What a competition charges, and what each of its events charges otherwise. A change is
 * written into the ledger at once for every team that owes something else by it.
 */
@Service
@Transactional(readOnly = true)
public class FeeRules {

	private final FeeTermsRepository terms;

	private final LedgerRowRepository rows;

	private final Bookkeeping books;

	private final Settlement settlement;

	private final FeeWindow window;

	private final Competitions competitions;

	private final Acts acts;

	FeeRules(FeeTermsRepository terms, LedgerRowRepository rows, Bookkeeping books, Settlement settlement,
			FeeWindow window, Competitions competitions, Acts acts) {
		this.terms = terms;
		this.rows = rows;
		this.books = books;
		this.settlement = settlement;
		this.window = window;
		this.competitions = competitions;
		this.acts = acts;
	}

	/**
	 * Set what is charged; nothing happens where that is so already.
	 * @throws ConflictException {@code stale-version}; {@code fees-archived};
	 * {@code fees-not-set} for an event while its competition charges nothing yet
	 * @throws RuleViolationException {@code currency-in-use} once amounts were written
	 * down in another one
	 * @throws NotFoundException if there is no such competition, or no such event in it
	 */
	@Transactional
	public RulesView set(SetTerms order, Actor actor) {
		this.window.hold(order.competition());
		RulesView before = of(order.competition());
		RulesView.Stated known = stated(order, before);
		ConflictException.requireSeen("fee-rules", order.seen(), known.number());
		checkCurrency(order, before);
		if (known.number() > 0 && known.terms().equals(order.terms()) && order.currency().equals(before.currency())) {
			return before;
		}
		int number = 1 + this.terms.findByCompetitionOrderByNumber(order.competition().value())
			.stream()
			.mapToInt(FeeTerms::number)
			.max()
			.orElse(0);
		this.terms.saveAndFlush(new FeeTerms(this.acts.nextId(), number, order, actor.name(), this.acts.now()));
		String what = order.currency().getCurrencyCode() + ", " + name(order) + ": ";
		this.acts.publish(AuditedChange.of(actor, "fee-rules", order.competition(), "fee-rules.set")
			.from((known.number() > 0) ? what + known.terms().inWords() : "", what + order.terms().inWords()));
		this.settlement.settle(order.competition(), actor);
		return of(order.competition());
	}

	private RulesView.Stated stated(SetTerms order, RulesView before) {
		EventId event = order.event();
		if (event == null) {
			return before.defaults();
		}
		if (!this.competitions.event(event).competition().equals(order.competition())) {
			throw NotFoundException.of("event", event);
		}
		if (!before.isGiven()) {
			throw new ConflictException("fees-not-set", Sentence.of("fees.not-set"));
		}
		return before.own(event);
	}

	private void checkCurrency(SetTerms order, RulesView before) {
		boolean other = before.isGiven() && !order.currency().equals(before.currency());
		if (other && (!before.events().isEmpty() || this.rows.existsByCompetition(order.competition().value()))) {
			throw RuleViolationException.ofField("currency-in-use", "currency",
					Sentence.of("fees.currency-in-use", before.paidIn().getCurrencyCode()));
		}
	}

	private String name(SetTerms order) {
		return (order.event() != null) ? this.competitions.event(order.event()).name() : "every event";
	}

	/** What a competition charges. */
	public RulesView of(CompetitionId competition) {
		return this.books.rules(competition);
	}

	/**
	 * The order to set what is charged.
	 *
	 * @param event {@code null} for every event of the competition that says nothing else
	 * @param seen the number of what the person was looking at, 0 for nothing
	 * @param terms their amounts are in that currency
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record SetTerms(CompetitionId competition, @Nullable EventId event, int seen, Currency currency,
			Terms terms) {

		private static final int MOST_SHARE = 99;

		public SetTerms {
			Terms.Withdrawal withdrawal = terms.withdrawal();
			if (withdrawal != null) {
				check(withdrawal);
			}
		}

		private static void check(Terms.Withdrawal withdrawal) {
			if (withdrawal.shareUntil() == null) {
				if (withdrawal.share() != 0) {
					throw RuleViolationException.ofField("field-missing", "shareUntil",
							Sentence.of("fees.share-until-missing"));
				}
				return;
			}
			Required.number("shareBack", withdrawal.share(), 1, MOST_SHARE);
			if (withdrawal.allBack() != null && !withdrawal.shareUntil().isAfter(withdrawal.allBack())) {
				throw RuleViolationException.ofField("days-reversed", "shareUntil",
						Sentence.of("fees.share-too-early"));
			}
		}

	}

}
