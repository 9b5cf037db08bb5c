package rimebook.fees;

import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.entries.SkaterCounts;
import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;

/**
 * Reads the books of a competition, with the same number of questions whatever the number
 * of teams, and writes rows into the ledger.
 */
@Component
@Transactional(readOnly = true)
class Bookkeeping {

	private final FeeTermsRepository terms;

	private final LedgerRowRepository rows;

	private final Competitions competitions;

	private final Entries entries;

	private final SkaterCounts skaters;

	private final Acts acts;

	Bookkeeping(FeeTermsRepository terms, LedgerRowRepository rows, Competitions competitions, Entries entries,
			SkaterCounts skaters, Acts acts) {
		this.terms = terms;
		this.rows = rows;
		this.competitions = competitions;
		this.entries = entries;
		this.skaters = skaters;
		this.acts = acts;
	}

	/** What a competition charges. */
	RulesView rules(CompetitionId competition) {
		RulesView.Stated defaults = RulesView.Stated.NOTHING;
		Map<EventId, RulesView.Stated> events = new HashMap<>();
		Currency currency = null;
		for (FeeTerms set : this.terms.findByCompetitionOrderByNumber(competition.value())) {
			EventId event = set.event();
			currency = set.currency();
			if (event != null) {
				events.put(event, set.view());
			}
			else {
				defaults = set.view();
			}
		}
		return (currency != null) ? new RulesView(currency, defaults, events) : RulesView.NONE;
	}

	/** Everything as it is now. */
	Books read(CompetitionId competition) {
		Map<EventId, EventView> events = this.competitions.events(competition)
			.stream()
			.collect(Collectors.toMap(EventView::id, Function.identity()));
		List<EntryView> entries = this.entries.ofEvents(events.keySet());
		return new Books(rules(competition), events, entries,
				this.skaters.of(entries.stream().map(EntryView::id).toList()),
				this.rows.findByCompetitionOrderByNumber(competition.value()));
	}

	/**
	 * Write a row; the competition is held.
	 * @param number the next of the club
	 * @param said what it says, for the record
	 * @param before what it takes back, as on the record; {@code null} for nothing
	 */
	@Transactional
	public LedgerRow write(LedgerRow.Draft draft, int number, String said, @Nullable String before, Actor actor) {
		LedgerRow row = this.rows
			.saveAndFlush(new LedgerRow(this.acts.nextId(), number, draft, actor.name(), this.acts.now()));
		String action = (before != null) ? "fee.reversed" : action(draft);
		this.acts.publish(AuditedChange.of(actor, "fee", row.getId(), action)
			.from((before != null) ? before : "", said)
			.because(draft.why()));
		return row;
	}

	private static String action(LedgerRow.Draft draft) {
		return switch (draft.kind()) {
			case OWED -> "fee.owed";
			case PAID -> "fee.paid";
			case WAIVED -> "fee.waived";
			case REFUNDED -> "fee.refunded";
		};
	}

}
