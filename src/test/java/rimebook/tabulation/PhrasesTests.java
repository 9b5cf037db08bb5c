package rimebook.tabulation;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class PhrasesTests {

	@ParameterizedTest
	@CsvSource({ "0, no judges", "1, one judge", "2, two judges", "13, 13 judges" })
	void countsJudges(int count, String words) {
		assertThat(Phrases.judges(count).english()).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource({ "100, 1st", "200, 2nd or better", "150, 1.5 or better", "1100, 11th or better" })
	void writesAnOrdinalAsAPlace(int hundredths, String words) {
		assertThat(Phrases.orBetter(hundredths).english()).isEqualTo(words);
	}

	@Test
	void namesTeams() {
		assertThat(list(List.of("A"))).isEqualTo("; behind A, ");
		assertThat(list(List.of("a", "b", "c"))).isEqualTo("; behind A, B and C, ");
		assertThat(list(names(12))).endsWith("K and L, ");
		assertThat(list(names(13))).isEqualTo("; behind A, B, C, D, E, F, G, H, I, J and 3 others, ");
	}

	@ParameterizedTest
	@CsvSource({ "0, 0, 0.0", "5, 0.05, 0.05", "10, 0.1, 0.1", "75, 0.75, 0.75", "100, 1, 1.0", "150, 1.5, 1.5",
			"560, 5.6, 5.6", "1205, 12.05, 12.05", "6900, 69, 69.0", "-5, -0.05, -0.05", "-50, -0.5, -0.5",
			"-300, -3, -3.0" })
	void hundredthsAreWrittenExactly(int hundredths, String plain, String decimal) {
		assertThat(Hundredths.plain(hundredths)).isEqualTo(plain).isEqualTo(Phrases.plain(hundredths).english());
		assertThat(Hundredths.decimal(hundredths)).isEqualTo(decimal).isEqualTo(Phrases.decimal(hundredths).english());
	}

	private static List<String> names(int count) {
		return IntStream.range(0, count).mapToObj((i) -> String.valueOf((char) ('A' + i))).toList();
	}

	private static String list(List<String> entries) {
		UnaryOperator<String> names = String::toUpperCase;
		return Sentence.of("why.behind", Phrases.list(entries, names), Sentence.NONE).english();
	}

}
