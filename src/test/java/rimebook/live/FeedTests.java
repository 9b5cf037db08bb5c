package rimebook.live;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

import rimebook.results.Cause;
import rimebook.results.ResultState;
import rimebook.results.ResultVersion;
import rimebook.results.Scope;
import rimebook.results.Standing;

import static org.assertj.core.api.Assertions.assertThat;

class FeedTests {

	private final JsonMapper json = JsonMapper.builder().build();

	@Test
	void standingIsWrittenInFullWithNothingLeftOut() {
		Standing.Row first = new Standing.Row(1, false, null, "e1", "A", "Club A", 2, "SKATED",
				List.of(new Standing.Card(560, 570, "1.5")), List.of(new Standing.Figure("majority-place", "1")),
				List.of(), null, "Because.");
		Standing.Row second = new Standing.Row(null, false, 1, "e2", "B", "Club B", 1, "WITHDRAWN", List.of(),
				List.of(), List.of(), null, "Withdrawn.");
		Standing standing = new Standing("Cup", "Junior", "Free", "Rulebook", "Rule set", "MAJORITY", 1, 2, 3, "First",
				"Second", List.of(), List.of(first, second));
		assertThat(text(standing)).isEqualTo("""
				{"version":4,"state":"PROVISIONAL","cause":"CORRECTED","note":"Corrected.",\
				"publishedAt":"2026-02-14T10:00:00Z","fingerprint":"ff","rulebook":"Rulebook","ruleSet":"Rule set",\
				"method":"MAJORITY","judges":1,"skated":2,"starters":3,"firstMark":"First","secondMark":"Second",\
				"segments":[],"rows":[{"place":1,"shared":false,"previousPlace":null,"entry":"e1","team":"A",\
				"club":"Club A","startNumber":2,"status":"SKATED",\
				"cards":[{"judge":1,"first":5.6,"second":5.7,"ordinal":1.5}],\
				"figures":[{"code":"majority-place","value":1}],"segmentPlaces":[],"total":null,"why":"Because."},\
				{"place":null,"shared":false,"previousPlace":1,"entry":"e2","team":"B","club":"Club B",\
				"startNumber":1,"status":"WITHDRAWN","cards":[],"figures":[],"segmentPlaces":[],"total":null,\
				"why":"Withdrawn."}]}""");
	}

	@Test
	void combinedStandingHasFactoredTotals() {
		Standing.Row row = new Standing.Row(1, true, 2, "e1", "A", "Club A", 0, "WAITING", List.of(), List.of(),
				Arrays.asList(3, null), 150, "So far.");
		Standing standing = new Standing("Cup", "Junior", "", "Rulebook", "Rule set", "MAJORITY", 1, 2, 3, "", "",
				List.of(new Standing.SegmentColumn("Short", 50), new Standing.SegmentColumn("Free", 75)), List.of(row));
		assertThat(text(standing)).contains("""
				"segments":[{"name":"Short","factor":0.5},{"name":"Free","factor":0.75}]""", "\"startNumber\":null",
				"\"segmentPlaces\":[3,null],\"total\":1.5");
	}

	private String text(Standing standing) {
		return this.json.writeValueAsString(
				Feed.StandingBody.of(new ResultVersion(Scope.SEGMENT, Stage.id(1), 4, ResultState.PROVISIONAL,
						Cause.CORRECTED, "Corrected.", Instant.parse("2026-02-14T10:00:00Z"), "ff", standing)));
	}

}
