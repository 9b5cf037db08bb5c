package rimebook.published;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;

import rimebook.wording.Sentence;

import static org.assertj.core.api.Assertions.assertThat;

class StandingTextTests {

	/** As versions were written before there was points judging. */
	private static final String PLACEMENT = """
			{"competition":"Cup","event":"Junior","segment":"Free","rulebook":"Rulebook","ruleSet":"Majority",\
			"method":"MAJORITY","judges":1,"skated":1,"starters":1,"firstMark":"First","secondMark":"Second",\
			"segments":[],"rows":[{"place":1,"shared":false,"previousPlace":null,"entry":"e1","team":"A","club":"B",\
			"startNumber":1,"status":"SKATED","cards":[{"first":560,"second":570,"ordinal":"1"}],"figures":[],\
			"segmentPlaces":[],"total":null,"why":"Because."}],"complete":true}""";

	private final StandingText text = new StandingText();

	@Test
	void readsVersionsFromBeforePointsJudgingAndWritesThemTheSame() {
		Standing standing = this.text.read(PLACEMENT);
		assertThat(standing.rows().get(0).score()).isNull();
		assertThat(standing.isByPoints()).isFalse();
		assertThat(this.text.write(standing)).isEqualTo(PLACEMENT);
	}

	@Test
	void readsBackThePointsItWrote() {
		Standing.Score score = new Standing.Score(6510, 3600, 3000, 2910, 0,
				List.of(new Standing.Score.ElementLine(1, "ME4", "move element", "COUNTS", 700,
						List.of(new Standing.Score.Mark(2, "COUNTED"), new Standing.Score.Mark(null, "ABSENT")), 140,
						840)),
				List.of(new Standing.Score.ComponentLine("Composition", 133,
						List.of(new Standing.Score.Mark(750, "COUNTED")), 750, 998)),
				List.of(new Standing.Score.DeductionLine("fall", "Fall", 2, 200)));
		Standing.Row row = new Standing.Row(1, false, null, "e1", "A", "B", 1, "SKATED", List.of(), List.of(),
				Arrays.asList(1, null), 6510, Sentence.said("Because."), score, Arrays.asList(6510, null));
		Standing standing = new Standing("Cup", "Senior", "Short", "Rulebook", Sentence.of("rules.majority", 7),
				"POINTS", 2, 1, 1, "", "", List.of(), List.of(row));
		assertThat(this.text.read(this.text.write(standing))).isEqualTo(standing);
		Standing.Outlook outlook = new Standing.Outlook(
				List.of(new Standing.Outlook.Chance("e1", "A", true, new Standing.Outlook.Range(1, 2, true), null),
						new Standing.Outlook.Chance("e2", "B", false, new Standing.Outlook.Range(1, 3, false),
								new Standing.Outlook.Range(2, 2, true))),
				List.of(Sentence.of("possible.need.win-event", 1, "", "B", Sentence.of("possible.need.help"),
						Sentence.NONE)),
				List.of(Sentence.said("C came between them.")));
		assertThat(this.text.read(this.text.write(standing.with(outlook)))).isEqualTo(standing.with(outlook));
	}

}
