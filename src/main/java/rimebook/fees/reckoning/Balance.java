package rimebook.fees.reckoning;

import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * How a club stands. What was waived counts up to what its team owes: a team that owes
 * less since does not earn by it, and no other team of the club owes less for it.
 *
 * @param owed by all its teams
 * @param waived of that
 */
public record Balance(Money owed, Money waived, Money paid, Money refunded) {

	/** Add up rows of the ledger. */
	public static Balance of(Collection<Booking> bookings, Currency currency) {
		Map<String, Money> sums = new HashMap<>();
		bookings.forEach((booking) -> sums.merge(key(booking.kind(), booking.team()), booking.amount(), Money::plus));
		Money owed = Money.none(currency);
		Money waived = owed;
		for (UUID team : bookings.stream().map(Booking::team).filter((one) -> one != null).distinct().toList()) {
			Money owes = sums.getOrDefault(key(BookingKind.OWED, team), Money.none(currency));
			owed = owed.plus(owes);
			waived = waived
				.plus(sums.getOrDefault(key(BookingKind.WAIVED, team), Money.none(currency)).atMost(owes).orNothing());
		}
		return new Balance(owed, waived, of(bookings, BookingKind.PAID, currency),
				of(bookings, BookingKind.REFUNDED, currency));
	}

	private static String key(BookingKind kind, @Nullable UUID team) {
		return kind + " " + team;
	}

	private static Money of(Collection<Booking> bookings, BookingKind kind, Currency currency) {
		return bookings.stream()
			.filter((booking) -> booking.kind() == kind)
			.map(Booking::amount)
			.reduce(Money.none(currency), Money::plus);
	}

	/** Nothing at all. */
	public static Balance none(Currency currency) {
		Money none = Money.none(currency);
		return new Balance(none, none, none, none);
	}

	/** What was paid and not given back. */
	public Money received() {
		return this.paid.minus(this.refunded);
	}

	/** What the club has still to pay; nothing where it paid enough. */
	public Money open() {
		return left().orNothing();
	}

	/** What the club paid too much. */
	public Money credit() {
		return left().negated().orNothing();
	}

	private Money left() {
		return this.owed.minus(this.waived).minus(received());
	}

	/**
	 * A row of the ledger.
	 *
	 * @param team whose entry it is about; {@code null} for the club as a whole
	 * @param amount below zero where it takes back an earlier one
	 */
	public record Booking(BookingKind kind, @Nullable UUID team, Money amount) {
	}

}
