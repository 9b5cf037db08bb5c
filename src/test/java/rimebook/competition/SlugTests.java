package rimebook.competition;

import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class SlugTests {

	@ParameterizedTest
	@CsvSource({ "Dunmöre Cup 2027, dunmore-cup-2027", "'  --Ice & Fire!-- ', ice-fire", "Ğĥ Ž, gh-z",
			"Кубок, competition" })
	void keepsLettersAndDigitsOnly(String name, String slug) {
		assertThat(Slug.of(name, "competition")).isEqualTo(slug);
	}

	@Test
	void staysShortWithoutAHyphenAtTheEnd() {
		assertThat(Slug.of("x".repeat(69) + " tail", "event")).isEqualTo("x".repeat(69));
	}

	@Test
	void countsUpWhereOthersHaveIt() {
		assertThat(Slug.unique("Junior", "event", Set.of("junior", "junior-2")::contains)).isEqualTo("junior-3");
	}

}
