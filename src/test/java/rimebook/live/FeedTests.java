package rimebook.live;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

import rimebook.published.Standing;
import rimebook.results.ResultVersion;
import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class FeedTests {

	private final JsonMapper json = JsonMapper.builder().build();

	@Test
	void standingIsWrittenInFullWithNothingLeftOut() {
		Standing.Row first = new Standing.Row(1, false, null, "e1", "A", "Club A", 2, "SKATED",
				List.of(new Standing.Card(560, 570, "1.5")), List.of(new Standing.Figure("majority-place", "1")),
				List.of(), null, Sentence.said("Because."));
		Standing.Row second = new Standing.Row(null, false, 1, "e2", "B", "Club B", 1, "WITHDRAWN", List.of(),
				List.of(), List.of(), null, Sentence.of("why.unplaced.withdrawn"));
		Standing standing = new Standing("Cup", "Junior", "Free", "Rulebook", Sentence.said("Rule set"), "MAJORITY", 1,
				2, 3, "First", "Second", List.of(), List.of(first, second));
		assertThat(text(standing)).isEqualTo("""
				{"version":4,"state":"PROVISIONAL","cause":"CORRECTED","note":"Corrected.",\
				"publishedAt":"2026-02-14T10:00:00Z","fingerprint":"ff","rulebook":"Rulebook","ruleSet":"Rule set",\
				"method":"MAJORITY","judges":1,"skated":2,"starters":3,"firstMark":"First","secondMark":"Second",\
				"segments":[],"rows":[{"place":1,"shared":false,"previousPlace":null,"entry":"e1","team":"A",\
				"club":"Club A","startNumber":2,"status":"SKATED",\
				"cards":[{"judge":1,"first":5.6,"second":5.7,"ordinal":1.5}],\
				"figures":[{"code":"majority-place","value":1}],"segmentPlaces":[],"total":null,"why":"Because.",\
				"score":null,"segmentTotals":null},\
				{"place":null,"shared":false,"previousPlace":1,"entry":"e2","team":"B","club":"Club B",\
				"startNumber":1,"status":"WITHDRAWN","cards":[],"figures":[],"segmentPlaces":[],"total":null,\
				"why":"No place: withdrawn.","score":null,"segmentTotals":null}]}""");
	}

	@Test
	void combinedStandingHasFactoredTotals() {
		Standing.Row row = new Standing.Row(1, true, 2, "e1", "A", "Club A", 0, "WAITING", List.of(), List.of(),
				Arrays.asList(3, null), 150, Sentence.said("So far."));
		Standing standing = new Standing("Cup", "Junior", "", "Rulebook", Sentence.said("Rule set"), "MAJORITY", 1, 2,
				3, "", "", List.of(new Standing.SegmentColumn("Short", 50), new Standing.SegmentColumn("Free", 75)),
				List.of(row));
		assertThat(text(standing)).contains("""
				"segments":[{"name":"Short","factor":0.5},{"name":"Free","factor":0.75}]""", "\"startNumber\":null",
				"\"segmentPlaces\":[3,null],\"total\":1.5");
	}

	@Test
	void pointsHaveTwoDecimalsAndEveryMarkItsUse() {
		Standing.Score score = new Standing.Score(6510, 3600, 3000, 2910, 0,
				List.of(new Standing.Score.ElementLine(1, "ME4", "move element, level 4", "COUNTS", 700,
						List.of(new Standing.Score.Mark(2, "COUNTED"), new Standing.Score.Mark(null, "ABSENT"),
								new Standing.Score.Mark(-5, "DROPPED_LOWEST")),
						140, 840)),
				List.of(new Standing.Score.ComponentLine("Composition", 133,
						List.of(new Standing.Score.Mark(750, "COUNTED")), 750, 998)),
				List.of(new Standing.Score.DeductionLine("fall", "Fall", 2, 200)));
		Standing.Row row = new Standing.Row(1, false, null, "e1", "A", "Club A", 2, "SKATED", List.of(), List.of(),
				List.of(), 6510, Sentence.said("Because."), score, null);
		Standing standing = new Standing("Cup", "Senior", "Short", "Rulebook", Sentence.said("Rule set"), "POINTS", 3,
				1, 1, "", "", List.of(), List.of(row));
		assertThat(text(standing)).contains("""
				"total":65.10,"why":"Because.","score":{"total":65.10,"elementPoints":36.00,"basePoints":30.00,\
				"componentPoints":29.10,"deducted":0.00,""", """
				"grades":[{"judge":1,"given":2,"use":"COUNTED"},{"judge":2,"given":null,"use":"ABSENT"},\
				{"judge":3,"given":-5,"use":"DROPPED_LOWEST"}],"mean":1.40,"score":8.40""", """
				{"name":"Composition","factor":1.33,"marks":[{"judge":1,"given":7.50,"use":"COUNTED"}],""", """
				{"item":"fall","name":"Fall","count":2,"points":2.00}""");
	}

	private String text(Standing standing) {
		return this.json.writeValueAsString(Feed.StandingBody
			.of(new ResultVersion(new ResultVersion.Key(ResultVersion.Scope.SEGMENT, Stage.id(1), 4),
					ResultVersion.ResultState.PROVISIONAL,
					new ResultVersion.Reason(ResultVersion.Cause.CORRECTED, Sentence.said("Corrected.")),
					Instant.parse("2026-02-14T10:00:00Z"), "ff", standing), null));
	}

}
