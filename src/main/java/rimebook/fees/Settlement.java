package rimebook.fees;

import java.util.HashMap;
import java.util.Map;

import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.entries.ClubView;
import rimebook.entries.EntryView;
import rimebook.fees.reckoning.BookingKind;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Reckoning;
import rimebook.shared.Actor;

/**
 * Writes into the ledger what teams owe more or less than it says, with how that comes
 * about.
 */
@Component
class Settlement {

	private final Bookkeeping books;

	Settlement(Bookkeeping books) {
		this.books = books;
	}

	/**
	 * Settle every team of a competition that is held; returns how many owe something
	 * else now. Nobody owes anything while nothing is charged.
	 */
	@Transactional(propagation = Propagation.MANDATORY)
	public int settle(CompetitionId competition, Actor actor) {
		if (!this.books.rules(competition).isGiven()) {
			return 0;
		}
		Books books = this.books.read(competition);
		Map<ClubView.Id, Integer> numbers = new HashMap<>();
		int changed = 0;
		for (EntryView entry : books.entries()) {
			Reckoning reckoning = books.reckoning(entry);
			Money more = reckoning.due().minus(books.sum(BookingKind.OWED, entry.id()));
			if (more.minor() != 0) {
				ClubView club = entry.team().club();
				int number = numbers.merge(club.id(), 1 + books.last(club.id()), (last, first) -> last + 1);
				write(competition, entry, reckoning, more, number, books.event(entry).name(), actor);
				changed++;
			}
		}
		return changed;
	}

	private void write(CompetitionId competition, EntryView entry, Reckoning reckoning, Money more, int number,
			String event, Actor actor) {
		LedgerRow.Whose whose = new LedgerRow.Whose(competition, entry.team().club().id(), entry.id());
		this.books.write(new LedgerRow.Draft(whose, BookingKind.OWED, more, reckoning.spoken().english(), null), number,
				"%s, %s: %s more, %s in all".formatted(entry.team().name(), event, more, reckoning.due()), null, actor);
	}

}
