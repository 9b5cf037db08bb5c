package rimebook.tabulation.points;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;

/** The worked examples of the rules, step by step. */
class WorkedExampleTests {

	private final PerformanceScore score = PointsTabulation.score(PublishedRules.SHORT,
			WorkedSheets.shortProgramme("A"));

	@Test
	void everyStepOfTheElementsAgrees() {
		List<CSVRecord> rows = WorkedSheets.rows("worked-elements.csv");
		assertThat(this.score.elements()).hasSameSizeAs(rows);
		for (int i = 0; i < rows.size(); i++) {
			PerformanceScore.ElementScore element = this.score.elements().get(i);
			PanelMean panel = Objects.requireNonNull(element.panel());
			assertThat(List.of(element.base(), panel.sum(), panel.quotient(), panel.mean(), element.grade(),
					element.score()))
				.extracting(Object::toString)
				.isEqualTo(fields(rows.get(i), "base", "sum", "mean", "grade", "grade", "score"));
			assertThat(panel.divisor()).isEqualTo(5);
		}
	}

	@Test
	void everyStepOfTheComponentsAgrees() {
		List<CSVRecord> rows = WorkedSheets.rows("worked-components.csv");
		assertThat(this.score.components()).hasSameSizeAs(rows);
		for (int i = 0; i < rows.size(); i++) {
			PerformanceScore.ComponentScore component = this.score.components().get(i);
			assertThat(List.of(component.rule().name(), component.panel().quotient(), component.panel().mean(),
					component.product(), component.points()))
				.extracting(Object::toString)
				.isEqualTo(fields(rows.get(i), "component", "mean", "panel", "product", "points"));
		}
	}

	@Test
	void totalsAgree() {
		assertThat(this.score.basePoints()).hasToString("31.50");
		assertThat(this.score.elementPoints()).hasToString("35.86");
		assertThat(this.score.componentPoints()).hasToString("29.27");
		assertThat(this.score.deducted()).isEqualTo(Points.ZERO);
		assertThat(this.score.total()).hasToString("65.13");
	}

	@Test
	void aFallOfOneSkaterTakesOnePoint() {
		DeductionRule.Deduction fall = PublishedRules.RULES.deduction("fall").orElseThrow().take(1, "referee");
		PerformanceScore less = PointsTabulation.score(PublishedRules.SHORT, WorkedSheets.shortProgramme("A", fall));
		assertThat(less.total()).hasToString("64.13");
		assertThat(less.elementPoints()).isEqualTo(this.score.elementPoints());
	}

	@Test
	void workingShowsEveryStepInOrder() {
		DeductionRule.Deduction fall = new DeductionRule.Deduction("fall", 2, new Points(200), "referee");
		List<String> working = PointsTabulation.score(PublishedRules.SHORT, WorkedSheets.shortProgramme("A", fall))
			.working();
		assertThat(working).hasSize(5 + 1 + 3 + 1 + 1 + 1)
			.startsWith("1. I4+pi3: base value 7.00; grades +2 +3 +2 +1 +2 +3 +2; mean of their points: "
					+ "1.40 + 1.40 + 1.40 + 2.10 + 1.40 = 7.70; 7.70 / 5 = 1.54, rounded 1.54; "
					+ "left out: 2.10 of judge 2 (highest), 0.70 of judge 4 (lowest); 7.00 + 1.54 = 8.54")
			.contains(
					"3. NHE3+s4: base value 7.75; grades -1 0 -1 -2 0 -1 0; mean of their points: "
							+ "-0.78 - 0.78 + 0.00 - 0.78 + 0.00 = -2.34; -2.34 / 5 = -0.468, rounded -0.47; "
							+ "left out: 0.00 of judge 2 (highest), -1.55 of judge 4 (lowest); 7.75 - 0.47 = 7.28",
					"Elements: 8.54 + 7.56 + 7.28 + 7.68 + 4.80 = 35.86",
					"Presentation: mean of the marks: 7.50 + 7.75 + 7.25 + 7.50 + 7.50 = 37.50; 37.50 / 5 = 7.50, "
							+ "rounded 7.50; left out: 8.00 of judge 6 (highest), 7.25 of judge 7 (lowest); "
							+ "7.50 x 1.33 = 9.9750, rounded 9.98",
					"Components: 9.78 + 9.98 + 9.51 = 29.27")
			.endsWith("fall: -2.00 (2)", "Total: 35.86 + 29.27 - 2.00 = 63.13");
	}

	static Stream<CSVRecord> panels() {
		return WorkedSheets.panels();
	}

	@ParameterizedTest
	@MethodSource("panels")
	void panelsOfEverySizeAgree(CSVRecord row) {
		Integer[] grades = Stream.of(row.get("grades").split(" ")).map(Integer::valueOf).toArray(Integer[]::new);
		PerformanceScore.ElementScore element = PerformanceScore.ElementScore.of(PublishedRules.SHORT,
				JudgedElement.of(1, row.get("code"), grades));
		PanelMean panel = Objects.requireNonNull(element.panel());
		assertThat(List.of(element.base(), panel.divisor(), panel.quotient(), element.grade(), element.score()))
			.extracting(Object::toString)
			.isEqualTo(fields(row, "base", "divisor", "mean", "grade", "score"));
	}

	private static List<String> fields(CSVRecord row, String... names) {
		return Stream.of(names).map(row::get).toList();
	}

}
