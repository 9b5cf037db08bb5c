package rimebook.tabulation.points;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class DeductionRuleTests {

	@ParameterizedTest
	@CsvSource({ "fall,1,1.00", "fall,2,2.00", "fall,16,2.00", "time,3,3.00", "illegal,2,4.00", "interruption,10,0.00",
			"interruption,11,1.00", "interruption,20,1.00", "interruption,21,2.00", "interruption,31,3.00",
			"interruption,1000,3.00" })
	void amountsGoByTheTable(String item, int count, String points) {
		DeductionRule rule = PublishedRules.RULES.deduction(item).orElseThrow();
		assertThat(rule.points(count)).hasToString(points);
		assertThat(rule.take(count, "referee"))
			.isEqualTo(new DeductionRule.Deduction(item, count, Points.parse(points), "referee"));
	}

	/** Amounts from memory, as the rule set says of itself. */
	@Test
	void theTableSaysHowManyAreProposedAtMost() {
		assertThat(PublishedRules.RULES.deduction("time").orElseThrow().most()).isEqualTo(6);
		assertThat(PublishedRules.RULES.deduction("fall").orElseThrow().most()).isEqualTo(DeductionRule.MOST);
	}

	@Test
	void perSkaterTakesTheAmountForEach() {
		DeductionRule rule = new DeductionRule("off", "Off the ice", DeductionRule.DeductionBasis.PER_SKATER,
				DeductionRule.DeductionUnit.of("skaters"), List.of(new DeductionRule.DeductionStep(1, new Points(50))),
				PointsFixtures.SOURCE);
		assertThat(rule.points(3)).hasToString("1.50");
	}

	@ParameterizedTest
	@CsvSource({ "0", "1001", "-1" })
	void refusesACountOutOfRange(int count) {
		DeductionRule rule = PublishedRules.RULES.deduction("fall").orElseThrow();
		assertThat(PointsFixtures.refusal(() -> rule.points(count)).code()).isEqualTo("deduction-out-of-range");
		assertThat(PointsFixtures.refusal(() -> rule.take(count, "x")).code()).isEqualTo("deduction-out-of-range");
	}

	@Test
	void deductionsAreChecked() {
		assertThat(PointsFixtures.refusal(() -> DeductionRule.Deduction.of(" ", Points.ZERO)).code())
			.isEqualTo("deduction-item-missing");
		assertThat(List.of(new Points(-1), new Points(100_001))).allSatisfy(
				(points) -> assertThat(PointsFixtures.refusal(() -> DeductionRule.Deduction.of("fall", points)).code())
					.isEqualTo("deduction-out-of-range"));
		assertThat(List.of(0, 1001)).allSatisfy((count) -> assertThat(
				PointsFixtures.refusal(() -> new DeductionRule.Deduction("fall", count, Points.ZERO, "")).code())
			.isEqualTo("deduction-out-of-range"));
		assertThat(new DeductionRule.Deduction("fall", 1000, new Points(100_000), "").points())
			.isEqualTo(new Points(100_000));
	}

	@Test
	void aRuleNeedsSteps() {
		assertThat(PointsFixtures
			.refusal(() -> new DeductionRule("fall", "Fall", DeductionRule.DeductionBasis.STEPS,
					DeductionRule.DeductionUnit.of("falls"), List.of(), PointsFixtures.SOURCE))
			.code()).isEqualTo("deduction-steps");
	}

	@Test
	void writtenAsOnTheSheet() {
		assertThat(DeductionRule.Deduction.of("fall", new Points(100)).words()).isEqualTo("fall: -1.00");
		assertThat(new DeductionRule.Deduction("fall", 3, new Points(200), "").words()).isEqualTo("fall: -2.00 (3)");
	}

}
