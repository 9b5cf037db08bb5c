package rimebook.fees.reckoning;

import java.util.Currency;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class MoneyTests {

	private static final Currency EUR = Currency.getInstance("EUR");

	@ParameterizedTest
	@CsvSource({ "EUR, 125.50, 12550, 125.50", "EUR, '125,5', 12550, 125.50", "EUR, 0, 0, 0.00",
			"EUR, ' 7 ', 700, 7.00", "JPY, 12500, 12500, 12500", "KWD, 1.234, 1234, 1.234", "KWD, 1.2, 1200, 1.200",
			"EUR, 999999999.99, 99999999999, 999999999.99" })
	void isReadAndWrittenWithTheDigitsOfItsCurrency(String code, String typed, long minor, String plain) {
		Money money = Money.read(typed, Currency.getInstance(code)).orElseThrow();
		assertThat(money.minor()).isEqualTo(minor);
		assertThat(money.plain()).isEqualTo(plain);
		assertThat(money).hasToString(plain + " " + code);
	}

	@ParameterizedTest
	@CsvSource({ "EUR, 1.234", "EUR, -1", "EUR, 1e3", "EUR, ''", "EUR, 1.", "EUR, .5", "EUR, '1 000'", "EUR, NaN",
			"EUR, 1000000000", "JPY, 1.0", "KWD, 1.2345" })
	void whatCouldMeanSomethingElseIsNotRead(String code, String typed) {
		assertThat(Money.read(typed, Currency.getInstance(code))).isEmpty();
	}

	/** Half up to the smallest unit. */
	@ParameterizedTest
	@CsvSource({ "EUR, 25, 50, 13", "EUR, 24, 50, 12", "EUR, 1, 50, 1", "EUR, 1, 49, 0", "EUR, 33333, 50, 16667",
			"EUR, 10000, 33, 3300", "JPY, 5, 50, 3", "JPY, 12501, 50, 6251", "KWD, 1235, 10, 124", "KWD, 1234, 10, 123",
			"EUR, 12345, 0, 0", "EUR, 12345, 100, 12345" })
	void aShareIsRoundedHalfUpToTheSmallestUnit(String code, long minor, int percent, long share) {
		assertThat(new Money(minor, Currency.getInstance(code)).share(percent).minor()).isEqualTo(share);
	}

	@ParameterizedTest
	@ValueSource(strings = { "EUR", "eur", " Jpy ", "KWD" })
	void aCurrencyIsKnownByItsCode(String code) {
		assertThat(Money.currency(code)).isPresent();
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "euro", "ZZZ", "€", "XAU", "XXX" })
	void whatNobodyPaysWithIsNone(String code) {
		assertThat(Money.currency(code)).isEmpty();
	}

	@Test
	void currenciesAreNeverMixedAndNothingOverflowsUnseen() {
		Money euro = new Money(100, EUR);
		assertThatIllegalArgumentException().isThrownBy(() -> euro.plus(new Money(100, Currency.getInstance("SEK"))));
		assertThatIllegalArgumentException().isThrownBy(() -> new Money(1, Currency.getInstance("XAU")));
		assertThatExceptionOfType(ArithmeticException.class)
			.isThrownBy(() -> new Money(Long.MAX_VALUE, EUR).plus(euro));
		assertThatExceptionOfType(IllegalStateException.class).isThrownBy(() -> euro.negated().share(50));
	}

}
