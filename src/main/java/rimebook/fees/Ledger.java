package rimebook.fees;

import java.util.Locale;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.competition.CompetitionId;
import rimebook.entries.ClubView;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.fees.reckoning.Balance;
import rimebook.fees.reckoning.BookingKind;
import rimebook.fees.reckoning.Money;
import rimebook.shared.Actor;
import rimebook.shared.ConflictException;
import rimebook.shared.NotFoundException;
import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * What clubs paid, what was waived and what was given back, written down by hand. No row
 * is ever changed: a slip is taken back by a further row. Each takes hold of the
 * competition, so that two people who book at once come one after the other.
 */
@Service
@Transactional
public class Ledger {

	private final Bookkeeping books;

	private final LedgerRowRepository rows;

	private final Settlement settlement;

	private final FeeWindow window;

	Ledger(Bookkeeping books, LedgerRowRepository rows, Settlement settlement, FeeWindow window) {
		this.books = books;
		this.rows = rows;
		this.settlement = settlement;
		this.window = window;
	}

	/**
	 * Write down that a club paid; more than it owes is kept for it.
	 * @throws ConflictException {@code stale-version} if somebody booked something of the
	 * club meanwhile, {@code fees-archived} or {@code fees-not-set}
	 * @throws RuleViolationException {@code field-out-of-range} if it is no amount
	 * @throws NotFoundException if the club never entered a team
	 */
	public LedgerRowView pay(Book order, Actor actor) {
		Books books = begin(order);
		return write(books, order, BookingKind.PAID, null, "paid " + order.amount(), actor);
	}

	/**
	 * Give something back to a club, as much as it paid at most.
	 * @throws RuleViolationException {@code refund-too-large}; further as for
	 * {@link #pay}
	 */
	public LedgerRowView refund(Book order, Actor actor) {
		Books books = begin(order);
		Money most = books.balance(order.club()).received();
		if (order.amount().minor() > most.minor()) {
			throw RuleViolationException.ofField("refund-too-large", "amount",
					Sentence.of("fees.refund-too-large", most.toString()));
		}
		return write(books, order, BookingKind.REFUNDED, null, "refunded " + order.amount(), actor);
	}

	/**
	 * Do not ask for some of what a team owes, or for all of it.
	 * @throws RuleViolationException {@code waiver-too-large}; further as for
	 * {@link #pay}
	 * @throws NotFoundException if the team is none of the club's
	 */
	public LedgerRowView waive(Book order, EntryId team, Actor actor) {
		Books books = begin(order);
		EntryView entry = books.entries(order.club())
			.stream()
			.filter((one) -> one.id().equals(team))
			.findFirst()
			.orElseThrow(() -> NotFoundException.of("entry", team));
		Money most = books.sum(BookingKind.OWED, team).minus(books.sum(BookingKind.WAIVED, team)).orNothing();
		if (order.amount().minor() > most.minor()) {
			throw RuleViolationException.ofField("waiver-too-large", "amount",
					Sentence.of("fees.waiver-too-large", most.toString()));
		}
		return write(books, order, BookingKind.WAIVED, team,
				"waived %s of %s, %s".formatted(order.amount(), entry.team().name(), books.event(entry).name()), actor);
	}

	/**
	 * Take back a payment, a waiver or a refund that was a slip.
	 * @param reason up to 500 characters
	 * @throws ConflictException {@code booking-reversed} if it was taken back already;
	 * {@code booking-follows} for what follows from entries, and for a row that takes
	 * back another; {@code refund-rests-on-it} for a payment of which something was given
	 * back
	 */
	public LedgerRowView reverse(LedgerRowView.Id id, String reason, Actor actor) {
		String why = Required.text("why", reason, 500);
		LedgerRow row = found(id);
		CompetitionId competition = row.whose().competition();
		this.window.hold(competition);
		LedgerRowView view = row.view(this.rows.existsByReverses(id.value()));
		if (view.reversed()) {
			throw new ConflictException("booking-reversed", Sentence.of("fees.reversed-already"));
		}
		if (!view.isReversible()) {
			throw new ConflictException("booking-follows", Sentence.of("fees.booking-follows"));
		}
		Books books = this.books.read(competition);
		Balance balance = books.balance(view.club());
		if (view.kind() == BookingKind.PAID && balance.received().minor() < view.amount().minor()) {
			throw new ConflictException("refund-rests-on-it", Sentence.of("fees.refund-rests-on-it"));
		}
		LedgerRow.Draft draft = new LedgerRow.Draft(row.whose(), view.kind(), view.amount().negated(), why, id.value());
		String before = view.kind().name().toLowerCase(Locale.ROOT) + " " + view.amount();
		return this.books.write(draft, 1 + books.last(view.club()), "taken back", before, actor).view(false);
	}

	/**
	 * Write down what teams owe by now; returns how many owed something else.
	 * @throws ConflictException {@code fees-archived}
	 */
	public int settle(CompetitionId competition, Actor actor) {
		this.window.hold(competition);
		return this.settlement.settle(competition, actor);
	}

	private LedgerRow found(LedgerRowView.Id id) {
		return this.rows.findById(id.value()).orElseThrow(() -> NotFoundException.of("booking", id));
	}

	private Books begin(Book order) {
		this.window.hold(order.competition());
		Books books = this.books.read(order.competition());
		if (!books.rules().isGiven()) {
			throw new ConflictException("fees-not-set", Sentence.of("fees.not-set"));
		}
		if (books.entries(order.club()).isEmpty()) {
			throw NotFoundException.of("club", order.club());
		}
		if (!order.amount().currency().equals(books.rules().currency())) {
			throw ConflictException.stale("club-account");
		}
		ConflictException.requireSeen("club-account", order.seen(), books.last(order.club()));
		return books;
	}

	private LedgerRowView write(Books books, Book order, BookingKind kind, @Nullable EntryId team, String said,
			Actor actor) {
		String club = clubName(books, order.club()).map((name) -> name + ": ").orElse("");
		LedgerRow.Whose whose = new LedgerRow.Whose(order.competition(), order.club(), team);
		return this.books
			.write(new LedgerRow.Draft(whose, kind, order.amount(), order.why(), null), 1 + books.last(order.club()),
					club + said, null, actor)
			.view(false);
	}

	private static Optional<String> clubName(Books books, ClubView.Id club) {
		return books.entries(club).stream().map((entry) -> entry.team().club().name()).findFirst();
	}

	/**
	 * The order to book something of a club.
	 *
	 * @param seen the version of the account that the person was looking at
	 * @param amount more than nothing
	 * @param why how it was paid, or the reason; up to 500 characters
	 * @throws RuleViolationException naming the field that does not fit
	 */
	public record Book(CompetitionId competition, ClubView.Id club, int seen, Money amount, String why) {

		public Book {
			why = Required.text("why", why, 500);
			if (!amount.isSome()) {
				throw RuleViolationException.ofField("field-out-of-range", "amount", Sentence.of("fees.amount-none"));
			}
		}

	}

}
