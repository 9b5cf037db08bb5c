package rimebook.wording;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class SentenceTests {

	private static final Locale FINNISH = Locale.forLanguageTag("fi");

	private final JsonMapper mapper = new JsonMapper();

	/** Source: English usage, from memory; twelve is the last number that is spelled. */
	@ParameterizedTest
	@CsvSource({ "0, no", "1, one", "5, five", "12, twelve", "13, 13", "1200, 1200" })
	void spellsSmallNumbers(int number, String words) {
		assertThat(Sentence.of("figure.number", number).english()).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource({ "1, 1st", "2, 2nd", "3, 3rd", "4, 4th", "11, 11th", "12, 12th", "13, 13th", "21, 21st", "112, 112th",
			"122, 122nd" })
	void writesPlaces(int place, String words) {
		assertThat(Sentence.of("figure.place", place).english()).isEqualTo(words);
	}

	@ParameterizedTest
	@CsvSource({ "300, 3, 3.0, 3.00", "150, 1.5, 1.5, 1.50", "-75, -0.75, -0.75, -0.75",
			"123456, 1234.56, 1234.56, 1234.56", "0, 0, 0.0, 0.00", "5, 0.05, 0.05, 0.05" })
	void writesHundredths(int hundredths, String plain, String decimal, String points) {
		assertThat(Sentence.of("figure.plain", hundredths).english()).isEqualTo(plain);
		assertThat(Sentence.of("figure.decimal", hundredths).english()).isEqualTo(decimal);
		assertThat(Sentence.of("figure.points", hundredths).english()).isEqualTo(points);
	}

	@Test
	void enumeratesAsTheLanguageDoes() {
		Sentence shared = Sentence.of("why.shared", List.of("A", "B", "C"));
		assertThat(shared.english()).contains("with A, B and C on");
		assertThat(Sentence.of("why.shared", List.of("A")).english()).contains("with A on");
	}

	/**
	 * A name is never taken for a pattern, nor a pattern's sign for the end of a name.
	 */
	@Test
	void saysNamesAsTheyStand() {
		String name = "L'Étoile {0} #1 & <b>{1,ordinal}</b>";
		assertThat(Sentence.of("why.behind", List.of(name), Sentence.said(name)).english())
			.isEqualTo("; behind " + name + ", " + name);
	}

	@Test
	void readsWhatItWrote() {
		Sentence sentence = Sentence.of("why.behind", List.of("A", Sentence.of("figure.others", 90)),
				Sentence.of("why.event.with-total", Sentence.of("figure.decimal", 350)));
		String json = this.mapper.writeValueAsString(sentence);
		assertThat(json).isEqualTo("{\"key\":\"why.behind\",\"arguments\":[[\"A\","
				+ "{\"key\":\"figure.others\",\"arguments\":[90]}],{\"key\":\"why.event.with-total\","
				+ "\"arguments\":[{\"key\":\"figure.decimal\",\"arguments\":[350]}]}]}");
		Sentence read = this.mapper.readValue(json, Sentence.class);
		assertThat(read).isEqualTo(sentence).hasSameHashCodeAs(sentence);
		assertThat(read.english()).isEqualTo("; behind A and 90 others, with 3.5");
	}

	/** A version stored before there were keys holds whole sentences. */
	@Test
	void readsAStringAsWordsThatStand() {
		Sentence old = this.mapper.readValue("\"1st: all {0} judges\"", Sentence.class);
		assertThat(old.english()).isEqualTo("1st: all {0} judges");
		assertThat(old.in(FINNISH)).isEqualTo("1st: all {0} judges");
		assertThat(old.isSpokenIn(FINNISH)).isFalse();
		assertThat(this.mapper.writeValueAsString(old)).isEqualTo("\"1st: all {0} judges\"");
	}

	@Test
	void nothingToSayIsNoForeignWord() {
		assertThat(Sentence.NONE.english()).isEmpty();
		assertThat(Sentence.NONE.isEmpty()).isTrue();
		assertThat(Sentence.NONE.isSpokenIn(FINNISH)).isTrue();
	}

	/** A version may have been stored by a newer program than the one that reads it. */
	@Test
	void aKeyWithoutWordsIsSaidAllTheSame() {
		Sentence unknown = Sentence.of("nowhere.to-be-found", "A", 3);
		assertThat(unknown.english()).isEqualTo("nowhere.to-be-found[A, 3]");
		assertThat(unknown.in(FINNISH)).isEqualTo("nowhere.to-be-found[A, 3]");
	}

	@Test
	void takesNoArgumentThatCannotBeStored() {
		assertThatIllegalArgumentException().isThrownBy(() -> Sentence.of("why.behind", 1.5))
			.withMessageContaining("1.5");
		assertThatIllegalArgumentException().isThrownBy(() -> Sentence.of(""));
		assertThatIllegalArgumentException().isThrownBy(() -> Sentence.of("why.behind", List.of(Locale.ROOT)));
	}

	@Test
	void saysPartsInOtherWords() {
		Sentence inner = Sentence.of("figure.others", 3);
		Sentence whole = Sentence.of("why.behind", List.of("A", inner), inner);
		Sentence replaced = whole.replacing((part) -> part.equals(inner) ? Sentence.said("B") : part);
		assertThat(replaced.english()).isEqualTo("; behind A and B, B");
		assertThat(whole.replacing((part) -> part)).isEqualTo(whole);
	}

	@Test
	void manyMaySpeakAtOnce() throws Exception {
		Sentence place = Sentence.of("why.pair.ahead", "A", 1, "B", 22, Sentence.of("figure.decimal", 350));
		ExecutorService threads = Executors.newFixedThreadPool(8);
		try {
			for (Future<String> said : threads.invokeAll(Collections.<Callable<String>>nCopies(2000, place::english))) {
				assertThat(said.get()).isEqualTo("A (1st) is ahead of B (22nd): 3.5.");
			}
		}
		finally {
			threads.shutdownNow();
		}
	}

}
