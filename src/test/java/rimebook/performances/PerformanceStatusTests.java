package rimebook.performances;

import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class PerformanceStatusTests {

	@ParameterizedTest
	@CsvSource({ "WAITING, ON_ICE WITHDRAWN DISQUALIFIED",
			"ON_ICE, CLOSED WAITING WITHDRAWN NOT_FINISHED DISQUALIFIED SET_ASIDE", "CLOSED, REOPENED",
			"REOPENED, CLOSED", "WITHDRAWN, ''", "NOT_FINISHED, ''", "DISQUALIFIED, ''", "SET_ASIDE, ON_ICE" })
	void movesOnlyAsTheRefereeMay(PerformanceStatus from, String legal) {
		for (PerformanceStatus next : PerformanceStatus.values()) {
			assertThat(from.canBecome(next)).as("%s to %s", from, next)
				.isEqualTo(List.of(legal.split(" ")).contains(next.name()));
		}
	}

	@ParameterizedTest
	@CsvSource({ "WAITING, ''", "ON_ICE, ''", "CLOSED, WITHDRAWN NOT_FINISHED DISQUALIFIED", "REOPENED, ''",
			"WITHDRAWN, WAITING ON_ICE CLOSED NOT_FINISHED DISQUALIFIED",
			"NOT_FINISHED, WAITING ON_ICE CLOSED WITHDRAWN DISQUALIFIED",
			"DISQUALIFIED, WAITING ON_ICE CLOSED WITHDRAWN NOT_FINISHED" })
	void twoOfficialsMoveOnlyWhatIsDone(PerformanceStatus from, String next) {
		for (PerformanceStatus to : PerformanceStatus.values()) {
			assertThat(from.canBeCorrectedTo(to)).as("%s to %s", from, to)
				.isEqualTo(List.of(next.split(" ")).contains(to.name()));
		}
	}

}
