package rimebook.entries;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;

import org.junit.jupiter.api.Test;

import rimebook.competition.RuleSets;
import rimebook.competition.SegmentId;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class RequiredListTests {

	/**
	 * Five elements of the short programme: block, circle, intersection, moves, no hold
	 * (preview of the world championships 2014 by the international federation).
	 */
	private static final RequiredList SHORT = new RequiredList(List.of(line(1, 1, "B", "PB", "AB"),
			line(1, 1, "C", "AC"), line(1, 1, "I", "CrI"), line(1, 1, "ME"), line(1, 1, "NHE")), 5, 5);

	@Test
	void aPlanAsAskedSaysNothing() {
		assertThat(against("PB4 C3 I4+pi3 ME4 NHE3+s4")).isEmpty();
		assertThat(against("NHEB ME1 CrI AC2 AB1")).as("another order, other kinds of the same line").isEmpty();
	}

	@Test
	void whatIsMissingIsNamedWithBothFigures() {
		assertThat(against("PB4 C3 I4+pi3 ME4")).containsExactly("Too few: NHE, 0 planned and at least 1 asked.",
				"Too few: elements in all, 4 planned and at least 5 asked.");
	}

	@Test
	void oneForAnotherIsBothTooFewAndTooMany() {
		assertThat(against("PB4 B2 I4 ME4 NHE2")).containsExactly(
				"Too many: B or PB or AB, 2 planned and at most 1 asked.",
				"Too few: C or AC, 0 planned and at least 1 asked.");
	}

	@Test
	void aSixthElementOfAKindThatNobodyAsksIsTooMany() {
		assertThat(against("PB4 C3 I4 ME4 NHE2 TwE3"))
			.containsExactly("Too many: elements in all, 6 planned and at most 5 asked.");
	}

	@Test
	void nothingIsSaidOfNoPlanAndOfNoList() {
		assertThat(against("")).isEmpty();
		assertThat(RequiredList.NONE.against(List.of("ME4"), Sentence::said)).isEmpty();
		assertThat(RequiredList.NONE.isEmpty()).isTrue();
	}

	/** Letters without a level are compared as they stand, large or small. */
	@Test
	void withoutATableLettersAreCompared() {
		RequiredList list = new RequiredList(List.of(line(1, 2, "circle"), line(0, 1, "W")), null, null);
		assertThat(words(list.against(List.of("Circle", "w", "W3"), Sentence::said)))
			.containsExactly("Too many: W, 2 planned and at most 1 asked.");
	}

	@Test
	void itIsSpokenInEachLanguage() {
		RequiredList list = new RequiredList(List.of(line(1, 1, "I", "CrI"), line(0, 1, "GL")), null, 10);
		assertThat(spoken(list, Locale.ENGLISH)).containsExactly("I or CrI: 1", "GL: 0 to 1",
				"elements in all: at most 10");
		assertThat(spoken(list, Locale.FRENCH)).containsExactly("I ou CrI : 1", "GL : 0 à 1",
				"éléments en tout : au plus 10");
		assertThat(spoken(list, Locale.forLanguageTag("fi"))).containsExactly("I tai CrI: 1", "GL: 0–1",
				"elementtejä yhteensä: enintään 10");
	}

	/** A ready list that no form would take could not be copied. */
	@Test
	void everyReadyListIsTakenAsItIsAndSaysWhereItWasRead() {
		RequiredSets sets = new RequiredSets();
		for (boolean byPoints : new boolean[] { true, false }) {
			assertThat(sets.fitting(byPoints)).isNotEmpty().allSatisfy((set) -> {
				assertThat(set.source()).contains("from memory");
				assertThat(new RequiredElements.SetRequired(new SegmentId(UUID.randomUUID()), set.id(), set.lines(),
						set.least(), set.most(), -1))
					.isNotNull();
				assertThat(set.lines().lines()).isNotEmpty();
			});
		}
		assertThat(RuleSets.elementOf("I4+pi3")).isEqualTo("I");
	}

	private static List<String> against(String codes) {
		return words(SHORT.against(codes.isEmpty() ? List.of() : Arrays.asList(codes.split(" ")), Sentence::said));
	}

	private static List<String> words(List<Sentence> sentences) {
		return sentences.stream().map(Sentence::english).toList();
	}

	private static List<String> spoken(RequiredList list, Locale language) {
		return list.spoken(Sentence::said).stream().map((one) -> Objects.requireNonNull(one.in(language))).toList();
	}

	private static RequiredList.Line line(int least, int most, String... signs) {
		return new RequiredList.Line(List.of(signs), least, most);
	}

}
