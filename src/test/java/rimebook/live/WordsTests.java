package rimebook.live;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.mock.web.MockHttpServletRequest;

import rimebook.results.ResultVersion;
import rimebook.tabulation.Criterion;

import static org.assertj.core.api.Assertions.assertThat;

class WordsTests {

	private static final PageWords ENGLISH = new PageWords(Locale.ENGLISH);

	private static final PageWords FRENCH = new PageWords(Locale.FRENCH);

	private static final PageWords FINNISH = new PageWords(Locale.forLanguageTag("fi"));

	@ParameterizedTest
	@CsvSource({ "'', After 1 of 3 teams, The only team", "_fr, Après 1 équipe sur 3, L’unique équipe",
			"_fi, 1/3 joukkuetta luistellut, Ainoa joukkue" })
	void aSingleTeamIsSpokenOfAsOne(String language, String after, String all) {
		Properties texts = texts(language);
		assertThat(MessageFormat.format(texts.getProperty("live.standing.after"), 1, 3)).isEqualTo(after);
		assertThat(MessageFormat.format(texts.getProperty("live.standing.all"), 1)).isEqualTo(all);
		assertThat(MessageFormat.format(texts.getProperty("live.standing.all"), 3)).contains("3");
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';',
			value = { "'';After 1 of 1 team;1 of 1 team;Under way, after 0 of 1 team",
					"_fr;Après 1 équipe sur 1;1 équipe sur 1;En cours, après 0 équipe sur 1",
					"_fi;1/1 joukkue luistellut;1/1 joukkue;Käynnissä, 0/1 joukkue luistellut" })
	void theOnlyTeamIsSpokenOfAsOne(String language, String after, String of, String underWay) {
		Properties texts = texts(language);
		assertThat(MessageFormat.format(texts.getProperty("live.standing.after"), 1, 1)).isEqualTo(after);
		assertThat(MessageFormat.format(texts.getProperty("live.standing.of"), 1, 1)).isEqualTo(of);
		assertThat(MessageFormat.format(texts.getProperty("live.phase.under-way"), 0, 1)).isEqualTo(underWay);
	}

	@ParameterizedTest
	@CsvSource({ "0, 0, '0 voittoa, 0 tuomariääntä'", "0.5, 5, '0,5 voittoa, 5 tuomariääntä'",
			"1, 1, '1 voitto, 1 tuomariääni'", "1.5, 8, '1,5 voittoa, 8 tuomariääntä'",
			"11, 81, '11 voittoa, 81 tuomariääntä'" })
	void oneWinAndOneJudgeAreSpokenOfAsOneInFinnish(BigDecimal wins, BigDecimal judges, String decided) {
		assertThat(MessageFormat.format(texts("_fi").getProperty("live.decided.wins"),
				FINNISH.plain(wins.movePointRight(2).intValueExact()), judges.toString(), wins, judges))
			.isEqualTo(decided);
	}

	@Test
	void thereAreWordsForEveryState() {
		Set<String> keys = texts("").stringPropertyNames();
		for (SegmentFacts.Phase phase : SegmentFacts.Phase.values()) {
			assertThat(keys).contains("live.phase." + phase.key());
		}
		for (Start.Mark mark : Start.Mark.values()) {
			assertThat(keys).contains(mark.key());
		}
		for (Change.Kind kind : Change.Kind.values()) {
			assertThat(keys).contains(new Change(kind, 1).key());
		}
	}

	@ParameterizedTest
	@EnumSource
	void thereAreWordsForEveryCause(ResultVersion.Cause cause) {
		assertThat(texts("")).containsKey("live.cause." + word(cause));
	}

	@ParameterizedTest
	@EnumSource(names = { "MAJORITY_PLACE", "SIZE_OF_MAJORITY", "TOTAL_OF_MAJORITY", "TOTAL_ORDINALS", "WINS",
			"JUDGES_IN_FAVOUR" })
	void thereAreWordsForEveryFigure(Criterion criterion) {
		assertThat(texts("")).containsKeys("live.figure." + word(criterion),
				"live.figure." + word(criterion) + ".value");
	}

	@ParameterizedTest
	@CsvSource({ "1, 1st, 1re, 1.", "2, 2nd, 2e, 2.", "3, 3rd, 3e, 3.", "4, 4th, 4e, 4.", "11, 11th, 11e, 11.",
			"12, 12th, 12e, 12.", "13, 13th, 13e, 13.", "21, 21st, 21e, 21.", "22, 22nd, 22e, 22.",
			"112, 112th, 112e, 112." })
	void placesAreNumberedAsTheLanguageDoes(int number, String english, String french, String finnish) {
		assertThat(ENGLISH.nth(number)).isEqualTo(english);
		assertThat(FRENCH.nth(number)).isEqualTo(french);
		assertThat(FINNISH.nth(number)).isEqualTo(finnish);
	}

	@Test
	void figuresHaveTheDecimalSignOfTheLanguage() {
		assertThat(ENGLISH.mark(560)).isEqualTo("5.6");
		assertThat(FRENCH.mark(560)).isEqualTo("5,6");
		assertThat(FINNISH.plain(150)).isEqualTo("1,5");
		assertThat(FINNISH.plain(300)).isEqualTo("3");
		assertThat(ENGLISH.plain(null)).isEqualTo("–");
		assertThat(ENGLISH.points(-50)).isEqualTo("−0.50");
		assertThat(FRENCH.majority(200)).isEqualTo("2e");
		assertThat(ENGLISH.majority(150)).isEqualTo("1.5th");
		assertThat(ENGLISH.total(75)).isEqualTo("0.75");
		assertThat(ENGLISH.total(null)).isEqualTo("–");
	}

	@Test
	void timesAreThoseOfTheRink() {
		Instant instant = Instant.parse("2026-02-14T12:32:00Z");
		ZoneId rink = ZoneId.of("Europe/Helsinki");
		assertThat(ENGLISH.time(instant, rink)).isEqualTo("14:32 EET");
		assertThat(FINNISH.dayAndTime(instant, rink)).startsWith("14. helmikuuta, 14.32 ");
	}

	@Test
	void daysAreWritten() {
		assertThat(ENGLISH.days(new Stage().competition)).isEqualTo("14–15 February 2026");
		assertThat(FRENCH.days(new Stage().competition)).isEqualTo("14–15 février 2026");
		assertThat(FINNISH.days(new Stage().competition)).isEqualTo("14.–15. helmikuuta 2026");
		assertThat(ENGLISH.days(new Stage().planned)).isEqualTo("1 April 2026");
	}

	@Test
	void longNamesHaveInitials() {
		assertThat(ENGLISH.initials("Short programme")).isEqualTo("SP");
		assertThat(FINNISH.initials("lyhytohjelma")).isEqualTo("L");
	}

	@ParameterizedTest
	@CsvSource({ "fr, en, fr, true", ", fr-CA, fr, false", ", sv;q=1, en, false", "xx, fi, fi, false",
			", 'nonsense;;q', en, false", "FR, , en, false" })
	void languageIsTheChosenOneElseTheBrowsers(String chosen, String accepted, String language, boolean carried) {
		MockHttpServletRequest request = new MockHttpServletRequest();
		if (chosen != null) {
			request.setParameter("lang", chosen);
		}
		if (accepted != null) {
			request.addHeader("Accept-Language", accepted);
		}
		PageLanguage pageLanguage = PageLanguage.of(request);
		assertThat(pageLanguage.locale().getLanguage()).isEqualTo(language);
		assertThat(pageLanguage.query()).isEqualTo(carried ? "?lang=" + language : "");
	}

	private static String word(Enum<?> value) {
		return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static Properties texts(String language) {
		Properties texts = new Properties();
		try (InputStream in = WordsTests.class.getResourceAsStream("/messages/live" + language + ".properties");
				Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
			texts.load(reader);
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
		return texts;
	}

}
