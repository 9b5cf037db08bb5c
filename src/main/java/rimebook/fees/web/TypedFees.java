package rimebook.fees.web;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Currency;

import org.jspecify.annotations.Nullable;

import rimebook.fees.RulesView;
import rimebook.fees.reckoning.Money;
import rimebook.fees.reckoning.Until;
import rimebook.shared.ConflictException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/** Reads amounts and terms as people type them. */
final class TypedFees {

	/** What is earlier or later is a slip. */
	private static final int FIRST_YEAR = 2000;

	private static final int LAST_YEAR = 2999;

	private TypedFees() {
	}

	/** The amount, {@code null} for an empty field. */
	static @Nullable Money amount(String field, @Nullable String typed, Currency currency) {
		return (typed == null || typed.isBlank()) ? null : Money.read(typed, currency)
			.orElseThrow(() -> RuleViolationException.ofField("field-not-a-number", field,
					Sentence.of("fees.no-amount", currency.getCurrencyCode(), currency.getDefaultFractionDigits())));
	}

	/** The currency of a code. */
	static Currency currency(@Nullable String typed) {
		return Money.currency((typed != null) ? typed : "")
			.orElseThrow(
					() -> RuleViolationException.ofField("no-currency", "currency", Sentence.of("fees.no-currency")));
	}

	/** The currency of a competition that charges something. */
	static Currency known(RulesView rules) {
		if (!rules.isGiven()) {
			throw new ConflictException("fees-not-set", Sentence.of("fees.not-set"));
		}
		return rules.paidIn();
	}

	/** Day and time at the rink, to the second; {@code null} for an empty field. */
	static @Nullable Until until(String field, @Nullable String typed, ZoneId zone) {
		String plain = (typed != null) ? typed.strip() : "";
		try {
			return plain.isEmpty() ? null : Until.at(checked(LocalDateTime.parse(plain.replace(' ', 'T'))), zone);
		}
		catch (DateTimeException ex) {
			throw RuleViolationException.ofField("field-no-time", field, Sentence.of("fees.no-time"));
		}
	}

	private static LocalDateTime checked(LocalDateTime there) {
		if (there.getYear() < FIRST_YEAR || there.getYear() > LAST_YEAR) {
			throw new DateTimeException("The year " + there.getYear());
		}
		return there;
	}

	/** How many of a hundred, 0 for an empty field. */
	static int percent(String field, @Nullable String typed) {
		String plain = (typed != null) ? typed.strip() : "";
		if (!plain.matches("\\d{0,3}")) {
			throw RuleViolationException.ofField("field-not-a-number", field, Sentence.of("fees.no-percent"));
		}
		return plain.isEmpty() ? 0 : Integer.parseInt(plain);
	}

}
