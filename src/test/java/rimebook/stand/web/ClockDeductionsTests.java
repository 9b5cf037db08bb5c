package rimebook.stand.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.clock.ClockView;
import rimebook.points.NotedDeduction;
import rimebook.tabulation.points.DeductionRule;
import rimebook.tabulation.points.PointsRules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

class ClockDeductionsTests {

	private static final Instant NOW = Instant.parse("2027-02-13T13:00:00Z");

	private final PointsRules rules = PointsRules.read(new PointsRules.RuleTexts(text("settings"), text("values"),
			text("components"), text("deductions"), text("elements")));

	@ParameterizedTest
	@CsvSource({ "TOO_LONG, 1, time, 1, Time violation: -1.00", "TOO_LONG, 5, time, 1, Time violation: -1.00",
			"TOO_LONG, 6, time, 2, Time violation: -2.00 (2)", "TOO_SHORT, 11, time, 3, Time violation: -3.00 (3)",
			"LATE_START, 75, late-start, 1, Late start: -1.00",
			"INTERRUPTION, 11, interruption, 11, Interruption in excess: -1.00 (11)",
			"INTERRUPTION, 20, interruption, 20, Interruption in excess: -1.00 (20)",
			"INTERRUPTION, 21, interruption, 21, Interruption in excess: -2.00 (21)",
			"INTERRUPTION, 40, interruption, 40, Interruption in excess: -3.00 (40)",
			"INTERRUPTION, 41, restart, 1, Restart with allowance: -5.00" })
	void eachFindingHasItsItemOfTheTable(ClockView.ClockFinding.Fault fault, int seconds, String item, int count,
			String text) {
		assertThat(of(List.of(), finding(fault, seconds)))
			.containsExactly(new ClockProposal(finding(fault, seconds), text, item, count, true));
	}

	@ParameterizedTest
	@CsvSource({ "TOO_LONG, 30, false", "TOO_LONG, 31, true", "TOO_SHORT, 31, true", "LATE_START, 90, false",
			"LATE_START, 91, true", "INTERRUPTION, 40, false", "INTERRUPTION, 41, true" })
	void whatIsMoreThanHalfAMinuteBeyondIsAskedAbout(ClockView.ClockFinding.Fault fault, int seconds, boolean asked) {
		assertThat(of(List.of(), finding(fault, seconds))).extracting((proposal) -> proposal.finding().isDoubtful())
			.containsExactly(asked);
	}

	@Test
	void clockThatWasForgottenProposesNoMoreThanTheTableTakes() {
		assertThat(of(List.of(), finding(ClockView.ClockFinding.Fault.TOO_LONG, 6 * 3600)))
			.extracting(ClockProposal::count)
			.containsExactly(6);
		assertThat(of(List.of(), finding(ClockView.ClockFinding.Fault.LATE_START, 3600)))
			.extracting(ClockProposal::count)
			.containsExactly(1);
	}

	@Test
	void whatIsNotedAnswersOneFinding() {
		List<ClockProposal> left = of(List.of(new NotedDeduction("interruption", 15, "Runa Hale", NOW, null)),
				finding(ClockView.ClockFinding.Fault.INTERRUPTION, 15),
				finding(ClockView.ClockFinding.Fault.INTERRUPTION, 30),
				finding(ClockView.ClockFinding.Fault.TOO_LONG, 3));
		assertThat(left).extracting(ClockProposal::item, (proposal) -> proposal.finding().seconds())
			.containsExactly(tuple("interruption", 30), tuple("time", 3));
	}

	/** The amounts may have been looked up; the forty seconds between them were not. */
	@Test
	void interruptionIsFromMemoryWhateverItsTableSays() {
		PointsRules checked = with(this.rules.deductions()
			.stream()
			.map((rule) -> new DeductionRule(rule.item(), rule.name(), rule.basis(), rule.unit(), rule.steps(),
					rule.most(),
					new PointsRules.RuleSource(PointsRules.RuleSource.Provenance.PUBLISHED, "Rulebook 2025, rule 1")))
			.toList());
		assertThat(new ClockDeductions(checked, List.of())
			.of(List.of(finding(ClockView.ClockFinding.Fault.INTERRUPTION, 40),
					finding(ClockView.ClockFinding.Fault.INTERRUPTION, 41),
					finding(ClockView.ClockFinding.Fault.TOO_LONG, 9))))
			.extracting(ClockProposal::item, ClockProposal::fromMemory)
			.containsExactly(tuple("interruption", true), tuple("restart", true), tuple("time", false));
	}

	@Test
	void whatTheTableDoesNotHaveIsNotProposed() {
		PointsRules without = with(List.of());
		assertThat(new ClockDeductions(without, List.of()).of(List.of(finding(ClockView.ClockFinding.Fault.TOO_LONG, 9),
				finding(ClockView.ClockFinding.Fault.LATE_START, 70),
				finding(ClockView.ClockFinding.Fault.INTERRUPTION, 50))))
			.isEmpty();
	}

	/** What the unit is called in words decides nothing. */
	@Test
	void secondsOfAUnitAreTheirOwnColumn() {
		ClockView.ClockFinding nine = finding(ClockView.ClockFinding.Fault.TOO_LONG, 9);
		assertThat(new ClockDeductions(with(units(OptionalInt.of(3))), List.of()).of(List.of(nine)))
			.extracting(ClockProposal::item, ClockProposal::count)
			.containsExactly(tuple("time", 3));
		assertThat(new ClockDeductions(with(units(OptionalInt.empty())), List.of())
			.of(List.of(nine, finding(ClockView.ClockFinding.Fault.INTERRUPTION, 30),
					finding(ClockView.ClockFinding.Fault.LATE_START, 70))))
			.extracting(ClockProposal::item)
			.containsExactly("late-start");
	}

	private List<DeductionRule> units(OptionalInt seconds) {
		return this.rules.deductions()
			.stream()
			.map((rule) -> new DeductionRule(rule.item(), rule.name(), rule.basis(),
					new DeductionRule.DeductionUnit("5 seconds", seconds), rule.steps(), rule.most(), rule.source()))
			.toList();
	}

	private PointsRules with(List<DeductionRule> deductions) {
		return new PointsRules(this.rules.id(), this.rules.title(), this.rules.values(), this.rules.trimFrom(),
				this.rules.tieBreaks(), this.rules.flooredAtZero(), this.rules.disqualifiedPlaces(),
				this.rules.components(), deductions, this.rules.elements(), this.rules.settings());
	}

	private List<ClockProposal> of(List<NotedDeduction> noted, ClockView.ClockFinding... findings) {
		return new ClockDeductions(this.rules, noted).of(List.of(findings));
	}

	private static ClockView.ClockFinding finding(ClockView.ClockFinding.Fault fault, int seconds) {
		return new ClockView.ClockFinding(fault, seconds, NOW);
	}

	private static String text(String table) {
		String path = "/rules/synchronized-2025-26/" + table + ".csv";
		try (InputStream file = Objects.requireNonNull(ClockDeductionsTests.class.getResourceAsStream(path))) {
			return new String(file.readAllBytes(), StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new AssertionError(path, ex);
		}
	}

}
