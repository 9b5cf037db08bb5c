package rimebook.panels;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class ClubNameTests {

	@ParameterizedTest
	@CsvSource({ "Harbour Blades, harbour blades, true", "Harbour Blades, HARBOURBLADES, true",
			"'Harbour\u00a0 Blades ', Harbour Blades, true", "A\u030abo Ice, \u00e5bo ice, true",
			"Harbour Blades, Harbour Blade, false", "'', '', false", "'  ', '', false", "'', Harbour Blades, false" })
	void caseBlanksAndTypingDoNotMatter(String one, String other, boolean same) {
		assertThat(new ClubName(one).isSameAs(new ClubName(other))).isEqualTo(same);
		assertThat(new ClubName(other).isSameAs(new ClubName(one))).isEqualTo(same);
	}

}
