package rimebook.fees;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.entries.ClubView;
import rimebook.entries.EntryView;
import rimebook.fees.reckoning.BookingKind;
import rimebook.shared.NotFoundException;

/** Tells how clubs stand. */
@Service
@Transactional(readOnly = true)
public class Fees {

	private static final Comparator<ClubView> BY_NAME = Comparator.comparing(ClubView::name,
			String.CASE_INSENSITIVE_ORDER);

	private final Bookkeeping books;

	private final LedgerRowRepository rows;

	private final Competitions competitions;

	Fees(Bookkeeping books, LedgerRowRepository rows, Competitions competitions) {
		this.books = books;
		this.rows = rows;
		this.competitions = competitions;
	}

	/**
	 * How all clubs stand that ever entered a team, with the same number of questions
	 * whatever the number of teams.
	 * @throws NotFoundException if there is no such competition
	 */
	public CompetitionFees of(CompetitionId id) {
		CompetitionView competition = this.competitions.competition(id);
		Books books = this.books.read(id);
		return new CompetitionFees(competition, books.rules(),
				books.rules().isGiven() ? clubs(books).map((club) -> account(books, club)).toList() : List.of());
	}

	/**
	 * How one club stands.
	 * @throws NotFoundException if it never entered a team, or while nothing is charged
	 */
	public ClubAccount account(CompetitionId id, ClubView.Id club) {
		Books books = this.books.read(this.competitions.competition(id).id());
		return clubs(books).filter((known) -> known.id().equals(club) && books.rules().isGiven())
			.findFirst()
			.map((known) -> account(books, known))
			.orElseThrow(() -> NotFoundException.of("club", club));
	}

	/**
	 * A row of the ledger.
	 * @throws NotFoundException if there is none of that identity
	 */
	public LedgerRowView row(LedgerRowView.Id id) {
		return this.rows.findById(id.value())
			.orElseThrow(() -> NotFoundException.of("booking", id))
			.view(this.rows.existsByReverses(id.value()));
	}

	private static Stream<ClubView> clubs(Books books) {
		return books.entries().stream().map((entry) -> entry.team().club()).distinct().sorted(BY_NAME);
	}

	private static ClubAccount account(Books books, ClubView club) {
		Set<UUID> reversed = books.reversed();
		return new ClubAccount(club, books.entries(club.id()).stream().map((entry) -> team(books, entry)).toList(),
				books.rows(club.id()).stream().map((row) -> row.view(reversed.contains(row.getId()))).toList(),
				books.balance(club.id()), books.last(club.id()));
	}

	private static ClubAccount.TeamFees team(Books books, EntryView entry) {
		return new ClubAccount.TeamFees(entry, books.event(entry), books.reckoning(entry),
				books.sum(BookingKind.OWED, entry.id()), books.sum(BookingKind.WAIVED, entry.id()));
	}

}
