package rimebook.tabulation.possible;

import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.tabulation.PlacementRules;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A few small situations in which everything is tried out: quick enough to be run for
 * every change that mutation makes. How much of what is said is exact must not fall.
 */
class SmallPanelsTests {

	/** Tried within the budget, and searched without one. */
	@ParameterizedTest
	@CsvSource({ "MAJORITY, 1, 5, 1, 60, 1320, 1315", "MAJORITY, 3, 4, 1, 60, 1142, 1128",
			"MAJORITY, 1, 3, 2, 60, 1519, 1519", "ONE_BY_ONE, 1, 5, 1, 60, 1320, 1315",
			"ONE_BY_ONE, 3, 4, 1, 60, 1142, 1127", "ONE_BY_ONE, 1, 3, 2, 60, 1531, 1531" })
	void whatIsSaidIsTrueAndAsExactAsEver(PlacementRules.PlacementMethod method, int judges, int mostMarked,
			int toSkate, int situations, int exactTried, int exactSearched) {
		Random random = new Random(1908);
		TruthCheck tried = new TruthCheck();
		TruthCheck searched = new TruthCheck();
		for (int i = 0; i < situations; i++) {
			RandomSituation situation = RandomSituation.next(random, method, judges, mostMarked, toSkate);
			Truth truth = new Truth(situation);
			tried.check(situation, truth, StillPossible.of(situation.underWay()));
			searched.check(situation, truth, StillPossible.of(situation.underWay(), 0));
		}
		assertThat(tried.exactAnswers()).isGreaterThanOrEqualTo(exactTried);
		assertThat(searched.exactAnswers()).isGreaterThanOrEqualTo(exactSearched);
	}

	@ParameterizedTest
	@CsvSource({ "MAJORITY, 5, 3", "ONE_BY_ONE, 5, 3", "MAJORITY, 7, 1", "ONE_BY_ONE, 7, 1" })
	void nothingThatHappensIsOutsideOfWhatWasPossible(PlacementRules.PlacementMethod method, int judges, int toSkate) {
		Random random = new Random(1908);
		for (int i = 0; i < 10; i++) {
			RandomSituation situation = RandomSituation.next(random, method, judges, 8, toSkate);
			PossiblePlaces said = StillPossible.of(situation.underWay());
			for (int outcome = 0; outcome < 20; outcome++) {
				new Outcome(situation, random).check(said);
			}
		}
	}

}
