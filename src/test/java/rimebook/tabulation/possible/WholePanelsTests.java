package rimebook.tabulation.possible;

import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.tabulation.PlacementRules;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * How many answers are exact on panels too large to be tried out. Searches are counted in
 * steps, so the number is what it was when this was written: more is welcome, fewer means
 * that a bound or a search has become weaker.
 */
class WholePanelsTests {

	@ParameterizedTest
	@CsvSource({ "MAJORITY, 9, 1, 271", "MAJORITY, 7, 4, 364", "ONE_BY_ONE, 9, 1, 290", "ONE_BY_ONE, 7, 4, 363" })
	void asMuchIsExactAsEver(PlacementRules.PlacementMethod method, int judges, int toSkate, int exact) {
		Random random = new Random(2_001);
		int found = 0;
		for (int i = 0; i < 6; i++) {
			PossiblePlaces said = StillPossible
				.of(RandomSituation.next(random, method, judges, 12, toSkate).underWay());
			for (PossiblePlaces.Outlook team : said.teams()) {
				PossiblePlaces.PlaceRange event = team.event();
				found += exactEnds(team.segment()) + ((event != null) ? exactEnds(event) : 0);
			}
			for (PossiblePlaces.PlaceNeed need : said.needs()) {
				found += (need.certain().exact() ? 1 : 0) + (need.possible().exact() ? 1 : 0);
			}
		}
		assertThat(found).isGreaterThanOrEqualTo(exact);
	}

	private static int exactEnds(PossiblePlaces.PlaceRange range) {
		return (range.bestExact() ? 1 : 0) + (range.worstExact() ? 1 : 0);
	}

}
