package rimebook.fees;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.fees.reckoning.Balance;
import rimebook.fees.reckoning.BookingKind;
import rimebook.fees.reckoning.Facts;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Reckoning;

/**
 * Everything about the fees of a competition at one moment. What is reckoned may be asked
 * only where rules were given.
 *
 * @param entries of all events, withdrawn ones among them
 * @param skaters how many skate, entries without a roster left out
 * @param rows the ledger, each club's in order
 */
record Books(RulesView rules, Map<EventId, EventView> events, List<EntryView> entries, Map<EntryId, Integer> skaters,
		List<LedgerRow> rows) {

	/** What a team owes by the rules as they are now. */
	Reckoning reckoning(EntryView entry) {
		return Reckoning.of(this.rules.of(entry.event()), facts(entry), this.rules.paidIn());
	}

	private Facts facts(EntryView entry) {
		EntryView.Withdrawal withdrawal = entry.withdrawal();
		return new Facts(entry.acceptance().enteredAt(), entry.isLate(), (withdrawal != null) ? withdrawal.at() : null,
				this.skaters.getOrDefault(entry.id(), 0), event(entry).isCancelled());
	}

	EventView event(EntryView entry) {
		return Objects.requireNonNull(this.events.get(entry.event()));
	}

	/**
	 * What the ledger says of a team: how much it owes, or how much of that is waived.
	 */
	Money sum(BookingKind kind, EntryId entry) {
		return this.rows.stream()
			.filter((row) -> row.is(kind, entry))
			.map(LedgerRow::amount)
			.reduce(Money.none(this.rules.paidIn()), Money::plus);
	}

	List<LedgerRow> rows(ClubView.Id club) {
		return this.rows.stream()
			.filter((row) -> row.club().equals(club))
			.sorted(Comparator.comparing(LedgerRow::writtenAt).thenComparing(LedgerRow::number))
			.toList();
	}

	/** How many rows a club has. */
	int last(ClubView.Id club) {
		return rows(club).stream().mapToInt(LedgerRow::number).max().orElse(0);
	}

	Balance balance(ClubView.Id club) {
		return Balance.of(rows(club).stream().map(LedgerRow::booking).toList(), this.rules.paidIn());
	}

	List<EntryView> entries(ClubView.Id club) {
		return this.entries.stream().filter((entry) -> entry.team().club().id().equals(club)).toList();
	}

	/** The rows that were taken back. */
	Set<UUID> reversed() {
		return this.rows.stream().map(LedgerRow::reverses).filter(Objects::nonNull).collect(Collectors.toSet());
	}

}
