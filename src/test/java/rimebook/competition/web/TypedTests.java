package rimebook.competition.web;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;

class TypedTests {

	@ParameterizedTest
	@CsvSource({ "0.5, 50", "'0,25', 25", "1, 100", "' 1.0 ', 100", "9.99, 999", "0.05, 5" })
	void readsFactors(String text, int hundredths) {
		assertThat(Typed.hundredths(text)).hasValue(hundredths);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "half", "-1", "0.505", ".5", "10", "1e1", "0.5.1" })
	void refusesWhatIsNoFactor(String text) {
		assertThat(Typed.hundredths(text)).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "2:40, 160", "0:30, 30", "' 10:00 ', 600" })
	void readsLengths(String text, int seconds) {
		assertThat(Typed.seconds(text)).hasValue(seconds);
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "240", "2:60", "2:4", "2.40", "-2:40", "100:00" })
	void refusesWhatIsNoLength(String text) {
		assertThat(Typed.seconds(text)).isEmpty();
	}

	@Test
	void writesLengths() {
		assertThat(Typed.length(160)).isEqualTo("2:40");
		assertThat(Typed.length(65)).isEqualTo("1:05");
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "ten", "-1", "1.5", "12345" })
	void refusesWhatIsNoWholeNumber(String text) {
		assertThat(Typed.number(text)).isEmpty();
	}

}
