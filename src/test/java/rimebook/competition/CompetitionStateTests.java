package rimebook.competition;

import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class CompetitionStateTests {

	@ParameterizedTest
	@CsvSource({ "PLANNED, ENTRIES_OPEN", "ENTRIES_OPEN, ENTRIES_CLOSED", "ENTRIES_CLOSED, ENTRIES_OPEN",
			"ENTRIES_CLOSED, RUNNING", "RUNNING, FINAL", "FINAL, ARCHIVED" })
	void mayMoveOn(CompetitionState state, CompetitionState next) {
		assertThat(state.canBecome(next)).isTrue();
	}

	@Test
	void noOtherMoveIsLegal() {
		long legal = Set.of(CompetitionState.values())
			.stream()
			.mapToLong((state) -> Set.of(CompetitionState.values()).stream().filter(state::canBecome).count())
			.sum();
		assertThat(legal).isEqualTo(6);
	}

	@Test
	void onlyTheEndIsTakenBackStepByStep() {
		assertThat(CompetitionState.ARCHIVED.before()).contains(CompetitionState.FINAL);
		assertThat(CompetitionState.FINAL.before()).contains(CompetitionState.RUNNING);
		assertThat(CompetitionState.RUNNING.before()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource({ "PLANNED, true", "ENTRIES_OPEN, true", "ENTRIES_CLOSED, true", "RUNNING, true", "FINAL, false",
			"ARCHIVED, false" })
	void isOpenToChangeUntilFinal(CompetitionState state, boolean open) {
		assertThat(state.isOpenToChange()).isEqualTo(open);
	}

}
