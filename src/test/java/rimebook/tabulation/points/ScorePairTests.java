package rimebook.tabulation.points;

import java.util.List;
import java.util.function.UnaryOperator;

import org.junit.jupiter.api.Test;

import rimebook.tabulation.EntryStatus;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.tabulation.points.PointsFixtures.BY_COMPONENTS;
import static rimebook.tabulation.points.PointsFixtures.BY_ELEMENTS;
import static rimebook.tabulation.points.PointsFixtures.performance;
import static rimebook.tabulation.points.PointsFixtures.refusal;
import static rimebook.tabulation.points.PointsFixtures.standing;

class ScorePairTests {

	private static final Performance A = performance("A", "30.00", "8.00");

	private static final Performance B = performance("B", "29.00", "9.00");

	private static final Performance C = performance("C", "30.00", "7.25",
			DeductionRule.Deduction.of("fall", new Points(100)));

	@Test
	void theBetterComesFirstWhoeverIsNamedFirst() {
		PointsStanding standing = standing(BY_ELEMENTS, A, B, C);
		String sentence = "A (1st) is ahead of C (3rd): 38.00 against 36.25 points, 1.75 more; both 30.00 for the "
				+ "elements; 8.00 against 7.25 for the components, 0.75 more; 0.00 against 1.00 deducted.";
		assertThat(ScorePair.of(standing, "A", "C").words(UnaryOperator.identity()).english()).isEqualTo(sentence);
		assertThat(ScorePair.of(standing, "C", "A").words(UnaryOperator.identity()).english()).isEqualTo(sentence);
	}

	/** Ties: ISU rules for the team event, Games of 2018. */
	@Test
	void aTieNamesThePartThatDecides() {
		assertThat(ScorePair.of(standing(BY_ELEMENTS, A, B), "B", "A").words((name) -> "Team " + name).english())
			.isEqualTo(
					"Team A (1st) is ahead of Team B (2nd): both 38.00 points; 30.00 against 29.00 for the elements, "
							+ "1.00 more; 8.00 against 9.00 for the components, 1.00 less; with equal totals the elements "
							+ "decide.");
		assertThat(ScorePair.of(standing(BY_COMPONENTS, A, B), "B", "A").words(UnaryOperator.identity()).english())
			.startsWith("B (1st) is ahead of A (2nd)")
			.endsWith("with equal totals the components decide.");
	}

	/** Otherwise tied: ISU rules for the team event, Games of 2018. */
	@Test
	void aSharedPlaceIsCalledOne() {
		assertThat(ScorePair.of(standing(BY_ELEMENTS, A, performance("D", "30.00", "8.00")), "D", "A")
			.words(UnaryOperator.identity())
			.english())
			.isEqualTo("D and A share 1st: both 38.00 points; both 30.00 for the elements; both 8.00 for the "
					+ "components.");
	}

	@Test
	void linesStandBesideEachOther() {
		Performance longer = Performance.skated("L",
				List.of(JudgedElement.of(1, "ME4", 0), JudgedElement.of(2, "AC2", 1)),
				List.of(JudgedComponent.of("Composition", 500)), List.of());
		assertThat(ScorePair.of(standing(BY_ELEMENTS, A, longer), "A", "L").lines())
			.containsExactly("1. AB2 30.00 | 1. ME4 7.00", "- | 2. AC2 4.40", "Composition 8.00 | 5.00");
	}

	@Test
	void twoTeamsWithAPlaceAreNeeded() {
		PointsStanding standing = standing(BY_ELEMENTS, A, Performance.without("W", EntryStatus.WITHDRAWN));
		assertThat(refusal(() -> ScorePair.of(standing, "A", "Z")).code()).isEqualTo("entry-unknown");
		assertThat(refusal(() -> ScorePair.of(standing, "A", "W"))).hasMessageContaining("'W'")
			.extracting("code")
			.isEqualTo("nothing-to-compare");
		assertThat(refusal(() -> ScorePair.of(standing, "A", "A")).code()).isEqualTo("nothing-to-compare");
	}

}
