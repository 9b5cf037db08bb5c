package rimebook.published;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

import rimebook.tabulation.EntryStatus;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class StandingRowTests {

	private final JsonMapper json = JsonMapper.builder().build();

	@Test
	void aTeamTakesItsOwnPlaceOrTheOneThatItLeavesEmpty() {
		assertThat(row(3, "SKATED").placeTaken()).isEqualTo(3);
		assertThat(row(null, "DISQUALIFIED", Standing.Figure.ofEmptyPlace(2)).placeTaken()).isEqualTo(2);
		assertThat(row(null, "DISQUALIFIED", new Standing.Figure("wins", "4")).placeTaken()).isNull();
	}

	@Test
	void aPlaceThatStaysEmptyIsStoredAsAFigureAndReadBack() {
		String stored = this.json.writeValueAsString(Standing.Figure.ofEmptyPlace(12));
		assertThat(stored).isEqualTo("{\"code\":\"empty-place\",\"value\":\"12\"}");
		assertThat(this.json.readValue(stored, Standing.Figure.class).emptyPlace()).contains(12);
	}

	@Test
	void nothingThatIsOnlyAskedOfARowIsStored() {
		assertThat(this.json.valueToTree(row(1, "SKATED")).propertyNames()).containsExactlyInAnyOrder("place", "shared",
				"previousPlace", "entry", "team", "club", "startNumber", "status", "cards", "figures", "segmentPlaces",
				"total", "why");
	}

	@Test
	void aTeamThatWaitsHasNoneOfTheStatusesOfTheIce() {
		Standing.Row waiting = row(null, Standing.WAITING);
		assertThat(waiting.waits()).isTrue();
		assertThat(EntryStatus.values()).noneMatch(waiting::has);
		assertThat(row(null, "WITHDRAWN").has(EntryStatus.WITHDRAWN)).isTrue();
		assertThat(row(null, "WITHDRAWN").waits()).isFalse();
	}

	private static Standing.Row row(@Nullable Integer place, String status, Standing.Figure... figures) {
		return new Standing.Row(place, false, null, "entry", "Team", "Club", 1, status, List.of(), List.of(figures),
				List.of(), null, Sentence.NONE);
	}

}
