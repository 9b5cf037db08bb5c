package rimebook.tabulation.possible;

import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.tabulation.PlacementRules;

import static org.assertj.core.api.Assertions.assertThat;

/** Whatever is said to be possible or impossible, against everything tried out. */
class StillPossiblePropertiesTests {

	@ParameterizedTest
	@CsvSource({ "MAJORITY, 3, 5, 1000", "MAJORITY, 5, 3, 60", "ONE_BY_ONE, 3, 5, 1000", "ONE_BY_ONE, 5, 3, 60" })
	void withOneTeamToSkateTheSegmentIsExactAndNothingIsWrong(PlacementRules.PlacementMethod method, int judges,
			int mostMarked, int situations) {
		Random random = new Random(2002);
		TruthCheck tried = new TruthCheck();
		TruthCheck searched = new TruthCheck();
		for (int i = 0; i < situations; i++) {
			RandomSituation situation = RandomSituation.next(random, method, judges, mostMarked, 1);
			Truth truth = new Truth(situation);
			tried.check(situation, truth, StillPossible.of(situation.underWay(), Integer.MAX_VALUE));
			searched.check(situation, truth, StillPossible.of(situation.underWay(), 0));
		}
		assertThat(tried.exactPercent()).isEqualTo(100);
		assertThat(searched.isExactInEverySegment()).isTrue();
		assertThat(searched.exactPercent()).isGreaterThan(85);
	}

	/** Five judges and six teams: the largest panel that can be tried out here. */
	@ParameterizedTest
	@CsvSource({ "MAJORITY", "ONE_BY_ONE" })
	void withFiveJudgesAndSixTeamsNothingIsWrong(PlacementRules.PlacementMethod method) {
		Random random = new Random(1997);
		TruthCheck searched = new TruthCheck();
		for (int i = 0; i < 6; i++) {
			RandomSituation situation = RandomSituation.next(random, method, 5, 5, 1);
			searched.check(situation, new Truth(situation), StillPossible.of(situation.underWay(), 0));
		}
		assertThat(searched.isExactInEverySegment()).isTrue();
	}

	@ParameterizedTest
	@CsvSource({ "MAJORITY, 1, 4, 400", "MAJORITY, 3, 2, 30", "ONE_BY_ONE, 1, 4, 400", "ONE_BY_ONE, 3, 2, 30" })
	void withTwoTeamsToSkateNoBoundIsExceeded(PlacementRules.PlacementMethod method, int judges, int mostMarked,
			int situations) {
		Random random = new Random(1998);
		TruthCheck check = new TruthCheck();
		for (int i = 0; i < situations; i++) {
			RandomSituation situation = RandomSituation.next(random, method, judges, mostMarked, 2);
			check.check(situation, new Truth(situation), StillPossible.of(situation.underWay()));
		}
		assertThat(check.answers()).isGreaterThan(situations);
		assertThat(check.exactPercent()).isGreaterThan(50);
	}

	@ParameterizedTest
	@CsvSource({ "MAJORITY, 9, 1", "MAJORITY, 9, 4", "MAJORITY, 7, 8", "ONE_BY_ONE, 9, 1", "ONE_BY_ONE, 9, 4",
			"ONE_BY_ONE, 7, 8" })
	void onWholePanelsNothingThatHappensIsOutsideOfWhatWasPossible(PlacementRules.PlacementMethod method, int judges,
			int toSkate) {
		Random random = new Random(2000);
		for (int i = 0; i < 5; i++) {
			RandomSituation situation = RandomSituation.next(random, method, judges, 20, toSkate);
			PossiblePlaces said = StillPossible.of(situation.underWay());
			for (int outcome = 0; outcome < 200; outcome++) {
				new Outcome(situation, random).check(said);
			}
		}
	}

}
