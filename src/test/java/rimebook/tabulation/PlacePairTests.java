package rimebook.tabulation;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** The chain of criteria between two teams, and the working of one. */
class PlacePairTests {

	private static final PlacementRules MAJORITY = PlacementRules.majority(SegmentKind.FREE);

	private static final PlacementRules ONE_BY_ONE = PlacementRules.oneByOne(SegmentKind.FREE);

	private static final EntryOrdinals A = ordinals("A", 1, 2, 2, 3, 5);

	private static final EntryOrdinals B = ordinals("B", 2, 1, 3, 2, 4);

	private static final EntryOrdinals C = ordinals("C", 3, 3, 1, 1, 2);

	private static EntryOrdinals ordinals(String entry, int... ordinals) {
		return new EntryOrdinals(entry, IntStream.of(ordinals).boxed().toList());
	}

	private static String words(SegmentStanding standing, String one, String other) {
		return PlacePair.of(standing, one, other).words(UnaryOperator.identity()).english();
	}

	/**
	 * Order of the criteria: 6.0 format as on the event pages of the 1998 Games,
	 * sports-reference.com.
	 */
	@Test
	void everyCriterionNeededIsNamedWhoeverIsNamedFirst() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(MAJORITY, List.of(A, B, C));
		String chain = "B (2nd) is ahead of A (3rd): majority place: both 2; judges at that place or better: both 3; "
				+ "total of those ordinals: both 5; total of all ordinals: 12 against 13, the lower is better.";
		assertThat(words(standing, "A", "B")).isEqualTo(chain);
		assertThat(words(standing, "B", "A")).isEqualTo(chain);
		assertThat(PlacePair.of(standing, "A", "C").steps()).containsExactly(
				new PlacePair.CriterionStep(Criterion.MAJORITY_PLACE, 200, 200),
				new PlacePair.CriterionStep(Criterion.SIZE_OF_MAJORITY, 3, 3),
				new PlacePair.CriterionStep(Criterion.TOTAL_OF_MAJORITY, 400, 500));
	}

	/**
	 * A greater majority is better: as the majority criteria of the 1998 Games,
	 * sports-reference.com.
	 */
	@Test
	void higherIsBetterForCounts() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(MAJORITY,
				List.of(ordinals("A", 1, 1, 2), ordinals("B", 1, 1, 1)));
		assertThat(PlacePair.of(standing, "A", "B").words((name) -> "Team " + name).english())
			.isEqualTo("Team B (1st) is ahead of Team A (2nd): majority place: both 1; judges at that place or better: "
					+ "3 against 2, the higher is better.");
	}

	/**
	 * Wins, then judges in favour, then shared: guidelines for the manual use of the
	 * results system, ISU 1998, as quoted with the worked example of December 1997.
	 */
	@Test
	void aSharedPlaceNamesEveryCriterion() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(ONE_BY_ONE,
				List.of(ordinals("A", 1, 1, 3), ordinals("B", 1, 1, 3), ordinals("C", 3, 3, 1)));
		assertThat(words(standing, "B", "A"))
			.isEqualTo("B and A share 1st: comparisons won: both 2; judges in favour: both 5.");
		assertThat(words(standing, "C", "A"))
			.isEqualTo("A (1st) is ahead of C (3rd): comparisons won: 2 against 0, the higher is better.");
	}

	@Test
	void twoTeamsWithAPlaceAreNeeded() {
		SegmentStanding standing = PlacementTabulation.ofCards(MAJORITY,
				List.of(EntryCards.skated("A", List.of(new CardMarks(500, 510))),
						EntryCards.without("W", EntryStatus.WITHDRAWN)));
		assertThatThrownBy(() -> words(standing, "A", "Z")).hasFieldOrPropertyWithValue("code", "entry-unknown");
		assertThatThrownBy(() -> words(standing, "W", "A")).hasMessageContaining("'W'")
			.hasFieldOrPropertyWithValue("code", "nothing-to-compare");
		assertThatThrownBy(() -> words(standing, "A", "A")).hasFieldOrPropertyWithValue("code", "nothing-to-compare");
		assertThatThrownBy(() -> PlacementWorking.of(MAJORITY, standing, "Z")).hasFieldOrPropertyWithValue("code",
				"entry-unknown");
		assertThat(PlacementWorking.of(MAJORITY, standing, "W")).isEmpty();
		assertThat(PlacementWorking.of(MAJORITY, standing, "A")).containsExactly(
				"Judge 1: 5.0 and 5.1, together 10.1, ordinal 1", "A majority is one of one judge",
				"1st: one judge, a majority", "Total of those ordinals: 1", "Total of all ordinals: 1");
	}

	@Test
	void theWayToTheMajorityIsShownColumnByColumn() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(MAJORITY, List.of(A, B, C));
		assertThat(PlacementWorking.of(MAJORITY, standing, "A")).containsExactly("Judge 1: ordinal 1",
				"Judge 2: ordinal 2", "Judge 3: ordinal 2", "Judge 4: ordinal 3", "Judge 5: ordinal 5",
				"A majority is three of five judges", "1st: one judge, no majority",
				"2nd or better: three judges, a majority", "Total of those ordinals: 1 + 2 + 2 = 5",
				"Total of all ordinals: 1 + 2 + 2 + 3 + 5 = 13");
	}

	/** What an even comparison counts is a setting: no rule text was found. */
	@Test
	void everyComparisonIsShown() {
		SegmentStanding standing = PlacementTabulation.ofOrdinals(
				ONE_BY_ONE.withEvenPanel(PlacementRules.EvenPanel.ALLOW)
					.withEqualJudgesInFavour(PlacementRules.EqualJudgesInFavour.NEITHER),
				List.of(ordinals("A", 1, 2), ordinals("B", 2, 1), ordinals("C", 3, 2)));
		PlacementRules rules = ONE_BY_ONE.withEqualJudgesInFavour(PlacementRules.EqualJudgesInFavour.NEITHER);
		assertThat(PlacementWorking.of(rules, standing, "A")).containsExactly("Judge 1: ordinal 1",
				"Judge 2: ordinal 2", "Against B: 1 in favour, 1 for the other, even, counts 0",
				"Against C: 2 in favour, 1 for the other, won", "Comparisons won: 1", "Judges in favour: 3");
		assertThat(PlacementWorking.of(rules, standing, "C")).contains("Against A: 1 in favour, 2 for the other, lost");
	}

}
