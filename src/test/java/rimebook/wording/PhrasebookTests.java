package rimebook.wording;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/** What each language does to figures, places, plurals and enumerations. */
class PhrasebookTests {

	/**
	 * Source: the locale data of Unicode (CLDR) that ICU carries; the wording is ours.
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "en | 22nd | 1234.5 | 65.10 | one judge | five judges",
			"fr | 22e | 1234,5 | 65,10 | 1 juge | 5 juges", "fi | 22. | 1234,5 | 65,10 | 1 tuomari | 5 tuomaria" })
	void writesFiguresAsTheLanguageDoes(String language, String place, String decimal, String points, String judge,
			String judges) {
		Locale locale = Locale.forLanguageTag(language);
		assertThat(Sentence.of("figure.place", 22).in(locale)).isEqualTo(place);
		assertThat(Sentence.of("figure.decimal", 123450).in(locale)).isEqualTo(decimal);
		assertThat(Sentence.of("figure.points", 6510).in(locale)).isEqualTo(points);
		assertThat(judges(1).in(locale)).isEqualTo(judge);
		assertThat(judges(5).in(locale)).isEqualTo(judges);
	}

	private static Sentence judges(int count) {
		return Sentence.of("figure.judges", count, Sentence.of("figure.number", count));
	}

	@Test
	void saysAWholeSentenceInEachLanguage() {
		Sentence why = Sentence.of("why.placed", 2, Sentence.of("why.shared", List.of("A", "B")),
				Sentence.of("why.majority.own",
						Sentence.of("why.majority.of-judges", Sentence.of("figure.number", 5),
								Sentence.of("figure.number", 7)),
						Sentence.of("figure.place-or-better", 2), Sentence.NONE, Sentence.NONE, 5),
				Sentence.of("why.behind", List.of("C"), Sentence.of("why.event.with-total", "3")), Sentence.NONE,
				Sentence.NONE);
		assertThat(why.english()).isEqualTo("2nd, shared with A and B on equal figures: "
				+ "five of seven judges had them 2nd or better; behind C, with 3.");
		assertThat(why.in(Locale.FRENCH)).isEqualTo("2e, ex æquo avec A et B sur tous les chiffres\u00a0: "
				+ "5 juges sur 7 l’ont placée 2e ou mieux\u00a0; derrière C, avec 3.");
		assertThat(why.in(Locale.forLanguageTag("fi-FI")))
			.isEqualTo("2. sija, kaikilla luvuilla tasan A ja B: 5/7 tuomaria: 2. sija tai parempi; "
					+ "edellä C, yhteensä 3.");
		assertThat(why.isSpokenIn(Locale.FRENCH)).isTrue();
	}

	/** A language without a file, and one whose file lacks the words, gets English. */
	@Test
	void speaksEnglishWhereTheLanguageHasNoWords() {
		Sentence sentence = Sentence.of("figure.place-or-better", 3);
		assertThat(sentence.in(Locale.GERMAN)).isEqualTo("3rd or better");
		assertThat(sentence.isSpokenIn(Locale.GERMAN)).isFalse();
		assertThat(Sentence.of("no-words-at-all").in(Locale.FRENCH)).isEqualTo("no-words-at-all[]");
	}

}
