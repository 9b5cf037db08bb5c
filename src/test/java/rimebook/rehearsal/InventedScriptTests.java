package rimebook.rehearsal;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import rimebook.competition.RuleSets;
import rimebook.points.ElementCalls;
import rimebook.points.PointsTasks;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.Points;
import rimebook.tabulation.points.SegmentRules;

import static org.assertj.core.api.Assertions.assertThat;

/** What is made up fits the rules by which it is counted, and is made up once. */
class InventedScriptTests {

	@ParameterizedTest
	@EnumSource(SegmentKind.class)
	void everyMarkFitsTheRules(SegmentKind kind) {
		SegmentRules rules = RuleSets.shipped().all().get(0).segment(kind, "senior");
		InventedScript script = new InventedScript(List.of(), rules, "Segment");
		List<ElementCalls.CallElements.Call> calls = script.calls("Frostlights");
		assertThat(calls).hasSize(6).allMatch((call) -> rules.values().find(call.code()).isPresent());
		assertThat(script.calls("Frostlights")).isEqualTo(calls);
		List<PointsTasks.PointsTask.Element> called = IntStream.range(0, calls.size())
			.mapToObj((i) -> new PointsTasks.PointsTask.Element(new UUID(1, i), i + 1, calls.get(i).code(), "", true))
			.toList();
		for (int judge = 1; judge <= 9; judge++) {
			assertThat(script.grades("Frostlights", judge, called).values()).hasSize(6)
				.allMatch(rules.values().grades()::contains);
			assertThat(script.components("Frostlights", judge).keySet())
				.containsExactlyElementsOf(rules.components().stream().map(SegmentRules.ComponentRule::name).toList());
			assertThat(script.components("Frostlights", judge).values())
				.allMatch((mark) -> JudgedComponent.isMark(new Points(mark)));
		}
	}

	@ParameterizedTest
	@EnumSource(SegmentKind.class)
	void whatIsPlannedIsCalled(SegmentKind kind) {
		SegmentRules rules = RuleSets.shipped().all().get(0).segment(kind, "senior");
		assertThat(new InventedScript(List.of("I4", "no such code"), rules, "Segment").calls("Frostlights"))
			.extracting(ElementCalls.CallElements.Call::code)
			.containsExactly("I4");
	}

}
