package rimebook.demo;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.junit.jupiter.SpringJUnitConfig;

import rimebook.competition.RuleSets;
import rimebook.points.ElementCalls;
import rimebook.points.PointsTasks;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.ElementValue;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.PointsRules;
import rimebook.tabulation.points.SegmentRules;

import static org.assertj.core.api.Assertions.assertThat;

/** The invented performances fit the rule set that they are scored by. */
@SpringJUnitConfig(RuleSets.class)
class DemoPerformancesTests {

	@Autowired
	private RuleSets ruleSets;

	@ParameterizedTest
	@CsvSource({ "short, SHORT, 5", "free, FREE, 10" })
	void everyMarkFitsTheRuleSet(String segment, SegmentKind kind, int elements) {
		PointsRules rules = this.ruleSets.all().get(0);
		SegmentRules segmentRules = rules.segment(kind, "senior");
		DemoPerformances files = new DemoPerformances(segment);
		assertThat(teams()).hasSize(8);
		for (String team : teams()) {
			List<ElementCalls.CallElements.Call> calls = files.calls(team);
			assertThat(calls).hasSize(elements).allMatch((call) -> rules.values().find(call.code()).isPresent());
			for (int judge = 1; judge <= 7; judge++) {
				assertThat(files.grades(team, judge, called(calls)).values()).hasSize(elements)
					.allMatch(ElementValue.GradeRange.ELEVEN_GRADES::contains);
				assertThat(files.components(team, judge).keySet())
					.containsExactlyElementsOf(segmentRules.components().stream().map((rule) -> rule.name()).toList());
				assertThat(files.components(team, judge).values())
					.allMatch((mark) -> JudgedComponent.isMark(new Points(mark)));
			}
			files.deductions(team)
				.forEach((item) -> assertThat(rules.deduction(item.item())).map(DeductionRule::item)
					.hasValue(item.item()));
		}
	}

	private static List<PointsTasks.PointsTask.Element> called(List<ElementCalls.CallElements.Call> calls) {
		return IntStream.range(0, calls.size())
			.mapToObj((i) -> new PointsTasks.PointsTask.Element(new UUID(1, i), i + 1, calls.get(i).code(), "", true))
			.toList();
	}

	private static Set<String> teams() {
		return DemoFiles.rows("entries.csv")
			.stream()
			.filter((row) -> row.get("event").equals("Senior"))
			.map((CSVRecord row) -> row.get("team"))
			.collect(Collectors.toSet());
	}

}
