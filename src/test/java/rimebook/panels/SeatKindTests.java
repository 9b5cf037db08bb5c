package rimebook.panels;

import java.util.EnumSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;

/** Which seats one person cannot hold in one event: common practice. */
class SeatKindTests {

	@ParameterizedTest
	@EnumSource(names = { "JUDGE", "SUBSTITUTE" })
	void whoHasACardNeitherLeadsNorCalls(SeatKind seat) {
		assertThat(EnumSet.allOf(SeatKind.class)).filteredOn(seat::excludes)
			.containsExactlyInAnyOrder(SeatKind.REFEREE, SeatKind.ASSISTANT_REFEREE, SeatKind.JUDGE,
					SeatKind.SUBSTITUTE, SeatKind.TECHNICAL_CONTROLLER, SeatKind.TECHNICAL_SPECIALIST,
					SeatKind.DATA_OPERATOR);
	}

	@Test
	void whoSignsAsRefereeIsNotTheAccountant() {
		assertThat(EnumSet.allOf(SeatKind.class)).filteredOn(SeatKind.ACCOUNTANT::excludes)
			.containsExactlyInAnyOrder(SeatKind.REFEREE, SeatKind.ACCOUNTANT);
	}

	@ParameterizedTest
	@EnumSource
	void seatsExcludeEachOtherBothWays(SeatKind seat) {
		assertThat(EnumSet.allOf(SeatKind.class))
			.allSatisfy((other) -> assertThat(other.excludes(seat)).isEqualTo(seat.excludes(other)));
	}

	@Test
	void whoSpeaksToTheHallMayHoldAnotherSeat() {
		assertThat(EnumSet.allOf(SeatKind.class)).noneMatch(SeatKind.ANNOUNCER::excludes);
	}

}
