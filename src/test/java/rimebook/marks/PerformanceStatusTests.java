package rimebook.marks;

import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class PerformanceStatusTests {

	@ParameterizedTest
	@CsvSource({ "WAITING, ON_ICE WITHDRAWN DISQUALIFIED", "ON_ICE, CLOSED WAITING WITHDRAWN NOT_FINISHED DISQUALIFIED",
			"CLOSED, REOPENED DISQUALIFIED", "REOPENED, CLOSED DISQUALIFIED", "WITHDRAWN, ''", "NOT_FINISHED, ''",
			"DISQUALIFIED, ''" })
	void movesOnlyAsTheRefereeMay(PerformanceStatus from, String legal) {
		for (PerformanceStatus next : PerformanceStatus.values()) {
			assertThat(from.canBecome(next)).as("%s to %s", from, next)
				.isEqualTo(List.of(legal.split(" ")).contains(next.name()));
		}
	}

}
