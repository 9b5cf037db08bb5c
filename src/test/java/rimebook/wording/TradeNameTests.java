package rimebook.wording;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
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
	void saysHowAnElementCame() {
		for (Locale language : List.of(Locale.FRENCH, FINNISH)) {
			assertThat(
					List.of("group lift, level 4, downgraded once", "twizzle element, basic level, downgraded twice"))
				.allMatch((name) -> TradeName.isSpokenIn(name, language));
		}
	}

	@Test
	void ruleSetKeepsItsTitleInEnglishAndIsNamedInTheLanguage() throws IOException {
		for (Resource table : new PathMatchingResourcePatternResolver()
			.getResources("classpath*:rules/*/settings.csv")) {
			String title = table.getContentAsString(StandardCharsets.UTF_8)
				.lines()
				.filter((line) -> line.startsWith("title,"))
				.map((line) -> line.split("\"")[1])
				.findFirst()
				.orElseThrow();
			Sentence kept = Sentence.of("rules.points.event", Sentence.of("rules.points.trimmed", 7, title, "senior"));
			assertThat(new Figures(Locale.ENGLISH).ruleSet(kept)).contains(title + ", senior");
			for (Locale language : List.of(Locale.FRENCH, FINNISH)) {
				assertThat(new Figures(language).ruleSet(kept)).contains("2025-26").doesNotContain(title, "season");
			}
		}
	}

	@Test
	void firstOfAMonthHasAFormOfItsOwnInFrench() {
		Instant first = Instant.parse("2026-12-01T11:53:00Z");
		assertThat(new Figures(Locale.FRENCH).dayAndTime(first, ZoneOffset.UTC)).startsWith("1er décembre");
		assertThat(new Figures(Locale.FRENCH).weekday(LocalDate.of(2026, 12, 2))).isEqualTo("mercredi 2 décembre");
		assertThat(new Figures(FINNISH).dayAndTime(first, ZoneOffset.UTC)).startsWith("1. joulukuuta");
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
