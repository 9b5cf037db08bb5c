package rimebook.wording;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

import static org.assertj.core.api.Assertions.assertThat;

class TradeNameTests {

	private static final Locale FINNISH = Locale.forLanguageTag("fi");

	@Test
	void saysEachPartOfAName() {
		String name = "no hold element, level 3, with step sequence, level 4";
		assertThat(TradeName.in(name, Locale.FRENCH))
			.isEqualTo("élément sans prise, niveau 3, avec suite de pas, niveau 4");
		assertThat(TradeName.in(name, FINNISH)).isEqualTo("otteeton elementti, taso 3, ja askelsarja, taso 4");
		assertThat(TradeName.in(name, Locale.ENGLISH)).isEqualTo(name);
	}

	@Test
	void unknownNameStaysEnglishAsAWhole() {
		String name = "backward sideways element, level 2";
		assertThat(TradeName.in(name, FINNISH)).isEqualTo(name);
		assertThat(TradeName.isSpokenIn(name, FINNISH)).isFalse();
		assertThat(TradeName.isSpokenIn("pivoting block, with something new, level 2", FINNISH)).isFalse();
	}

	@Test
	void everyNameOfARuleSetIsSpoken() throws IOException {
		for (String file : List.of("elements:2", "components:2", "deductions:1")) {
			String[] parts = file.split(":");
			Resource[] tables = new PathMatchingResourcePatternResolver()
				.getResources("classpath*:rules/*/" + parts[0] + ".csv");
			assertThat(tables).isNotEmpty();
			for (Resource table : tables) {
				Stream<String> names = table.getContentAsString(StandardCharsets.UTF_8)
					.lines()
					.filter((line) -> !line.startsWith("#"))
					.skip(1)
					.map((line) -> line.split(",")[Integer.parseInt(parts[1])]);
				assertThat(names).isNotEmpty()
					.allMatch(
							(name) -> TradeName.isSpokenIn(name, Locale.FRENCH) && TradeName.isSpokenIn(name, FINNISH));
			}
		}
	}

}
