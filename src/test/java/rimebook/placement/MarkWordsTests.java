package rimebook.placement;

import java.math.BigDecimal;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import rimebook.shared.RuleViolationException;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class MarkWordsTests {

	@ParameterizedTest
	@CsvSource({ "0, 0", "0.0, 0", "5.6, 560", "5.60, 560", "6, 600", "6.0, 600", "6E0, 600", "0.1, 10" })
	void readsTenths(BigDecimal typed, int hundredths) {
		assertThat(MarkWords.read("first", typed)).isEqualTo(hundredths);
	}

	@ParameterizedTest
	@ValueSource(strings = { "-0.1", "6.1", "5.65", "56", "1E9", "1E-9", "1E999999999" })
	void refusesWhatIsNoMarkAndNamesTheField(String typed) {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> MarkWords.read("second", new BigDecimal(typed)))
			.withMessageContaining("second")
			.satisfies((refusal) -> assertThat(refusal.field()).isEqualTo("second"));
	}

}
