package rimebook.tabulation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import rimebook.tabulation.points.EntryTotals;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsCombination;
import rimebook.tabulation.points.PointsEventStanding;
import rimebook.tabulation.points.TotalPair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class EventPairTests {

	private static final CombinationRules RULES = CombinationRules.ofFactors(List.of(50, 100));

	private static final EventStanding PLACES = Combination.combine(RULES, List.of(entry("A", 3, 1), entry("B", 1, 2),
			entry("C", 2, 3), entry("D", 5, null), entry("E", 4, null), entry("F", 3, 1)));

	@Test
	void theTotalDecides() {
		assertThat(words("C", "A")).isEqualTo(
				"A (1st) is ahead of C (4th): total of the factored places: 2.5 against 4.0, the lower is better.");
	}

	@Test
	void equalTotalsGoByTheLastSegment() {
		assertThat(words("A", "B")).isEqualTo("A (1st) is ahead of B (3rd): total of the factored places: both 2.5; "
				+ "place in the last segment: 1 against 2, the lower is better.");
	}

	@Test
	void levelTeamsAreLevelInEverything() {
		assertThat(words("A", "F")).isEqualTo(
				"A and F share 1st: total of the factored places: both 2.5; " + "place in the last segment: both 1.");
	}

	@Test
	void whoHasSkatedEverythingIsAheadOfWhoHasNot() {
		assertThat(words("E", "C")).isEqualTo("C (4th) is ahead of E (5th): only C has a place in every segment.");
		assertThat(words("D", "E")).startsWith("E (5th) is ahead of D (6th): last segment with a place: both 1; ")
			.contains("place in that segment: 4 against 5, the lower is better");
	}

	@Test
	void pointsDecideInTheirOwnForm() {
		PointsEventStanding standing = PointsCombination.combine(2, DisqualifiedPlaces.CLOSE_FINAL_PLACES,
				List.of(totals("A", 6000, 12000), totals("B", 7000, 11000), totals("C", 5000, 10000)));
		assertThat(TotalPair.of(standing, "C", "A").words(UnaryOperator.identity()).english()).isEqualTo(
				"A (1st) is ahead of C (3rd): points of all segments: 180.00 against 150.00, the higher is better.");
		assertThat(TotalPair.of(standing, "B", "A").words(UnaryOperator.identity()).in(Locale.FRENCH))
			.isEqualTo("A (1re) devance B (2e)\u00a0: points de tous les segments\u00a0: 180,00 pour les deux\u00a0; "
					+ "points du dernier segment\u00a0: 120,00 contre 110,00, le plus grand l’emporte.");
	}

	@Test
	void nobodyIsComparedWithNobody() {
		assertThatExceptionOfType(TabulationException.class).isThrownBy(() -> words("A", "A"));
		assertThatExceptionOfType(TabulationException.class).isThrownBy(() -> words("A", "Z"));
		EventStanding gone = Combination.combine(RULES,
				List.of(entry("A", 1, 1), new EntryPlaces("B", EntryStatus.WITHDRAWN, Arrays.asList(2, null))));
		assertThatExceptionOfType(TabulationException.class).isThrownBy(() -> EventPair.of(RULES, gone, "A", "B"));
	}

	private static String words(String one, String other) {
		return EventPair.of(RULES, PLACES, one, other).words(UnaryOperator.identity()).english();
	}

	private static EntryPlaces entry(String entry, @Nullable Integer first, @Nullable Integer second) {
		return new EntryPlaces(entry, EntryStatus.SKATED, Arrays.asList(first, second));
	}

	private static EntryTotals totals(String entry, int first, int second) {
		return EntryTotals.of(entry, new EntryTotals.SegmentTotal(1, new Points(first)),
				new EntryTotals.SegmentTotal(1, new Points(second)));
	}

}
