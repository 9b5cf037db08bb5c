package rimebook.tabulation;

import java.util.List;
import java.util.function.UnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class EnglishTests {

	@ParameterizedTest
	@CsvSource({ "1, 1st", "2, 2nd", "3, 3rd", "4, 4th", "10, 10th", "11, 11th", "12, 12th", "13, 13th", "14, 14th",
			"21, 21st", "22, 22nd", "23, 23rd", "100, 100th", "101, 101st", "111, 111th", "113, 113th", "121, 121st" })
	void placesAreSpokenAsOrdinalNumbers(int place, String words) {
		assertThat(English.ordinal(place)).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource({ "0, no judges", "1, one judge", "2, two judges", "12, twelve judges", "13, 13 judges" })
	void smallCountsAreWords(int count, String words) {
		assertThat(English.count(count, "judge")).isEqualTo(words);
	}

	@Test
	void listsEndWithAnd() {
		assertThat(English.list(List.of("A"), UnaryOperator.identity())).isEqualTo("A");
		assertThat(English.list(List.of("A", "B"), UnaryOperator.identity())).isEqualTo("A and B");
		assertThat(English.list(List.of("a", "b", "c"), String::toUpperCase)).isEqualTo("A, B and C");
	}

	@ParameterizedTest
	@CsvSource({ "0, 0, 0.0", "5, 0.05, 0.05", "10, 0.1, 0.1", "75, 0.75, 0.75", "100, 1, 1.0", "150, 1.5, 1.5",
			"560, 5.6, 5.6", "1205, 12.05, 12.05", "6900, 69, 69.0", "-5, -0.05, -0.05", "-50, -0.5, -0.5",
			"-300, -3, -3.0" })
	void hundredthsAreWrittenExactly(int hundredths, String plain, String decimal) {
		assertThat(Hundredths.plain(hundredths)).isEqualTo(plain);
		assertThat(Hundredths.decimal(hundredths)).isEqualTo(decimal);
	}

}
