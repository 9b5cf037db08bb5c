package rimebook.fees.reckoning;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount in the smallest units of a currency, such as cents; never in fractions of
 * these.
 *
 * @param minor may be below zero, where something is taken back
 * @param currency one that has such units (ISO 4217)
 */
public record Money(long minor, Currency currency) {

	/** As people type it: a point or a comma before the smaller units. */
	private static final Pattern TYPED = Pattern.compile("(\\d{1,9})(?:[.,](\\d{1,4}))?");

	private static final int HUNDRED = 100;

	public Money {
		if (currency.getDefaultFractionDigits() < 0) {
			throw new IllegalArgumentException(currency + " has no smallest units");
		}
	}

	/** No money at all. */
	public static Money none(Currency currency) {
		return new Money(0, currency);
	}

	/**
	 * The currency of that code, in whatever case; empty where there is none in which
	 * something can be paid, as for gold.
	 */
	public static Optional<Currency> currency(String code) {
		try {
			return Optional.of(Currency.getInstance(code.strip().toUpperCase(Locale.ROOT)))
				.filter((currency) -> currency.getDefaultFractionDigits() >= 0);
		}
		catch (IllegalArgumentException ex) {
			return Optional.empty();
		}
	}

	/**
	 * Read an amount as it was typed, without the currency. More digits after the point
	 * than the currency has are not understood, since nobody knows what was meant.
	 */
	public static Optional<Money> read(String typed, Currency currency) {
		Matcher amount = TYPED.matcher(typed.strip());
		if (!amount.matches()) {
			return Optional.empty();
		}
		int digits = currency.getDefaultFractionDigits();
		String small = (amount.group(2) != null) ? amount.group(2) : "";
		return (small.length() > digits) ? Optional.empty() : Optional
			.of(new Money(Long.parseLong(amount.group(1) + small + "0".repeat(digits - small.length())), currency));
	}

	/** The sum of both. */
	public Money plus(Money other) {
		return new Money(Math.addExact(this.minor, same(other)), this.currency);
	}

	/** What is left of it. */
	public Money minus(Money other) {
		return new Money(Math.subtractExact(this.minor, same(other)), this.currency);
	}

	/** So many times as much. */
	public Money times(int count) {
		return new Money(Math.multiplyExact(this.minor, count), this.currency);
	}

	/** The same taken back. */
	public Money negated() {
		return new Money(Math.negateExact(this.minor), this.currency);
	}

	/**
	 * A share of it, half up to the smallest unit: 50 % of 0.25 are 0.13. So it is common
	 * practice where money is given back.
	 * @param percent 0 to 100
	 * @throws IllegalStateException below zero, where half up says nothing
	 */
	public Money share(int percent) {
		if (this.minor < 0) {
			throw new IllegalStateException("No share of " + this);
		}
		return new Money(Math.addExact(Math.multiplyExact(this.minor, percent), HUNDRED / 2) / HUNDRED, this.currency);
	}

	/** The smaller of both. */
	public Money atMost(Money other) {
		return (same(other) < this.minor) ? other : this;
	}

	/** It, or nothing where it is below zero. */
	public Money orNothing() {
		return (this.minor < 0) ? none(this.currency) : this;
	}

	/** Tell whether it is more than nothing. */
	public boolean isSome() {
		return this.minor > 0;
	}

	private long same(Money other) {
		if (!other.currency.equals(this.currency)) {
			throw new IllegalArgumentException(this + " and " + other);
		}
		return other.minor;
	}

	/** Without the currency, as in a table: "1250.00". */
	public String plain() {
		return BigDecimal.valueOf(this.minor, this.currency.getDefaultFractionDigits()).toPlainString();
	}

	/** "1250.00 EUR". */
	@Override
	public String toString() {
		return plain() + " " + this.currency.getCurrencyCode();
	}

}
