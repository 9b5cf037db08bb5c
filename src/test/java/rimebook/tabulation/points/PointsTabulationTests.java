package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Reason;

import static org.assertj.core.api.Assertions.assertThat;
import static rimebook.tabulation.points.PointsFixtures.BY_COMPONENTS;
import static rimebook.tabulation.points.PointsFixtures.BY_ELEMENTS;
import static rimebook.tabulation.points.PointsFixtures.performance;
import static rimebook.tabulation.points.PointsFixtures.places;
import static rimebook.tabulation.points.PointsFixtures.refusal;
import static rimebook.tabulation.points.PointsFixtures.standing;

class PointsTabulationTests {

	private static final Performance A = performance("A", "30.00", "8.00");

	private static final Performance B = performance("B", "29.00", "9.00");

	private static final Performance C = performance("C", "20.10", "7.25",
			DeductionRule.Deduction.of("fall", new Points(100)));

	/**
	 * Segments go by the total of points: ISU rules for the team event, Games of 2018.
	 */
	@Test
	void higherTotalIsAhead() {
		assertThat(places(standing(BY_ELEMENTS, C, performance("D", "20.00", "7.00"), A))).containsExactly("1 A", "2 D",
				"3 C");
	}

	/** Ties of a short programme: ISU rules for the team event, Games of 2018. */
	@Test
	void equalTotalsOfAShortProgrammeGoByTheElements() {
		PointsStanding standing = standing(BY_ELEMENTS, B, A, C);
		assertThat(places(standing)).containsExactly("1 A", "2 B", "3 C");
		assertThat(standing.row("B").orElseThrow().reason()).isEqualTo(
				new Reason(List.of(), new Reason.Comparison(List.of("A"), 1, Criterion.ELEMENT_POINTS, 2900, 3000),
						new Reason.Comparison(List.of("C"), 3, Criterion.TOTAL_POINTS, 3800, 2635)));
	}

	/** Ties of a free skating: ISU rules for the team event, Games of 2018. */
	@Test
	void equalTotalsOfAFreeSkatingGoByTheComponents() {
		PointsStanding standing = standing(BY_COMPONENTS, A, B);
		assertThat(places(standing)).containsExactly("1 B", "2 A");
		assertThat(standing.tieBreak()).isEqualTo(SegmentRules.TieBreak.COMPONENTS);
	}

	/** Otherwise tied: ISU rules for the team event, Games of 2018. */
	@Test
	void withoutATieBreakEqualTotalsShareThePlace() {
		assertThat(places(standing(PointsFixtures.rules(SegmentRules.TieBreak.NONE), B, C, A))).containsExactly("1 A",
				"1 B", "3 C");
	}

	/**
	 * Otherwise tied: ISU rules for the team event, Games of 2018; that the next place is
	 * not awarded is common practice.
	 */
	@Test
	void equalFiguresShareThePlaceAndTheNextIsNotAwarded() {
		Performance same = performance("E", "29.00", "9.00");
		PointsStanding standing = standing(BY_ELEMENTS, C, same, A, B);
		assertThat(places(standing)).containsExactly("1 A", "2 B", "2 E", "4 C");
		assertThat(standing.rows()).extracting(PointsStanding.ScoredEntry::shared)
			.containsExactly(false, true, true, false);
	}

	/** The tie-break looks at the parts before deductions. */
	@Test
	void deductionsCountInTheTotalOnly() {
		Performance fallen = performance("F", "30.50", "8.50", DeductionRule.Deduction.of("fall", new Points(100)));
		assertThat(places(standing(BY_ELEMENTS, A, fallen))).containsExactly("1 F", "2 A");
		assertThat(standing(BY_ELEMENTS, A, fallen).row("F").flatMap(PointsStanding.ScoredEntry::segmentTotal))
			.contains(new EntryTotals.SegmentTotal(1, new Points(3800)));
	}

	@Test
	void whySentencesNameTheDecidingFigures() {
		Performance same = performance("E", "29.00", "9.00");
		PointsStanding standing = standing(BY_ELEMENTS, C, same, A, B);
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.containsExactly(
					"1st: 38.00 points (30.00 for the elements, 8.00 for the components); ahead of B and E, "
							+ "who had the same total but 29.00 for the elements.",
					"2nd, shared with E on equal figures: 38.00 points (29.00 for the elements, 9.00 for the "
							+ "components); behind A, who had the same total but 30.00 for the elements; ahead of C, "
							+ "who had 26.35, 11.65 less.",
					"2nd, shared with B on equal figures: 38.00 points (29.00 for the elements, 9.00 for the "
							+ "components); behind A, who had the same total but 30.00 for the elements; ahead of C, "
							+ "who had 26.35, 11.65 less.",
					"4th: 26.35 points (20.10 for the elements, 7.25 for the components, less 1.00 deducted); "
							+ "behind B and E, who had 38.00, 11.65 more.");
		assertThat(standing(BY_COMPONENTS, A, B).rows().get(0).why((name) -> "Team " + name).english()).isEqualTo(
				"1st: 38.00 points (29.00 for the elements, 9.00 for the components); ahead of Team A, who had the "
						+ "same total but 8.00 for the components.");
		assertThat(standing(BY_ELEMENTS, A).rows().get(0).why().english()).endsWith("; no other team is placed.");
	}

	/** Order of those without a place: common practice. */
	@Test
	void teamsWithoutAPlaceFollowByStatus() {
		PointsStanding standing = standing(BY_ELEMENTS, Performance.without("Y", EntryStatus.DISQUALIFIED),
				Performance.without("X", EntryStatus.WITHDRAWN), A, Performance.without("Z", EntryStatus.NOT_FINISHED),
				Performance.without("W", EntryStatus.WITHDRAWN));
		assertThat(places(standing)).containsExactly("1 A", "null Z", "null W", "null X", "null Y");
		assertThat(standing.rows()).extracting((row) -> row.why().english())
			.endsWith("No place: did not finish the programme.", "No place: withdrawn.", "No place: withdrawn.",
					"No place: disqualified.");
		assertThat(standing.row("X").flatMap(PointsStanding.ScoredEntry::segmentTotal)).isEmpty();
		assertThat(standing.judges()).isEqualTo(1);
	}

	/** A setting; the three ways are from memory. */
	@ParameterizedTest
	@CsvSource({ "CLOSE_ALL_PLACES,2", "CLOSE_FINAL_PLACES,3", "LEAVE_GAPS,3" })
	void placesBehindADisqualifiedTeamGoByTheRules(DisqualifiedPlaces policy, int place) {
		SegmentRules rules = new SegmentRules(BY_ELEMENTS.values(), 5, BY_ELEMENTS.components(),
				SegmentRules.TieBreak.ELEMENTS, false, policy);
		Performance disqualified = new Performance("B", EntryStatus.DISQUALIFIED, B.elements(), B.components(),
				B.deductions());
		PointsStanding standing = standing(rules, A, disqualified, C);
		assertThat(places(standing)).containsExactly("1 A", place + " C", "null B");
		assertThat(standing.row("B").orElseThrow().score()).isNotNull();
		assertThat(standing.row("B").flatMap(PointsStanding.ScoredEntry::segmentTotal)).isEmpty();
	}

	@Test
	void anEmptySegmentHasAnEmptyStanding() {
		assertThat(standing(BY_ELEMENTS)).isEqualTo(new PointsStanding(SegmentRules.TieBreak.ELEMENTS, 0, List.of()));
	}

	/**
	 * No source has a floor; where an organiser has one it is common practice to stop at
	 * 0.
	 */
	@Test
	void aTotalMayBeNegativeUnlessTheRulesHaveAFloor() {
		Performance fallen = performance("A", "0.50", "0.25", DeductionRule.Deduction.of("restart", new Points(500)),
				DeductionRule.Deduction.of("fall", new Points(100)));
		SegmentRules floored = new SegmentRules(BY_ELEMENTS.values(), 5, BY_ELEMENTS.components(),
				SegmentRules.TieBreak.ELEMENTS, true, DisqualifiedPlaces.CLOSE_ALL_PLACES);
		PerformanceScore free = PointsTabulation.score(BY_ELEMENTS, fallen);
		assertThat(free.total()).hasToString("-5.25");
		assertThat(free.deducted()).hasToString("6.00");
		assertThat(free.working()).endsWith("Total: 0.50 + 0.25 - 6.00 = -5.25");
		PerformanceScore stopped = PointsTabulation.score(floored, fallen);
		assertThat(stopped.total()).isEqualTo(Points.ZERO);
		assertThat(stopped.working()).endsWith("restart: -5.00", "fall: -1.00",
				"Total: 0.50 + 0.25 - 6.00 = -5.25, not below 0.00");
		assertThat(PointsTabulation.score(floored, A).total()).hasToString("38.00");
	}

	/**
	 * Elements too many or without value: common practice of published detail pages;
	 * values of ISU Communication 2693, 2 April 2025.
	 */
	@Test
	void elementsWithoutValueCountNothingWhateverTheJudgesGave() {
		Performance performance = Performance.skated("A",
				List.of(new JudgedElement(3, "ME4", JudgedElement.ElementWorth.TOO_MANY, new Points(700),
						List.of(5, 5)), JudgedElement.without(1, "PB", JudgedElement.ElementWorth.NO_VALUE),
						JudgedElement.of(2, "ME4", 1, null)),
				List.of(JudgedComponent.of("Composition", 700, 725)), List.of());
		PerformanceScore score = PointsTabulation.score(BY_ELEMENTS, performance);
		assertThat(score.elements()).extracting((element) -> element.element().number()).containsExactly(1, 2, 3);
		assertThat(score.elementPoints()).hasToString("7.70");
		assertThat(score.basePoints()).hasToString("7.00");
		assertThat(score.elements().get(2).grade()).isEqualTo(Points.ZERO);
		assertThat(score.working()).startsWith("1. PB: no value, 0.00",
				"2. ME4: base value 7.00; grades +1 -; mean of their points: 0.70; 0.70 / 1 = 0.70, rounded 0.70; "
						+ "7.00 + 0.70 = 7.70",
				"3. ME4: one element too many: no value, 0.00", "Elements: 0.00 + 7.70 + 0.00 = 7.70",
				"Composition: mean of the marks: 7.00 + 7.25 = 14.25; 14.25 / 2 = 7.125, rounded 7.13; "
						+ "7.13 x 1.00 = 7.1300, rounded 7.13",
				"Components: 7.13");
	}

	@Test
	void aSumOfTwoIsWrittenOut() {
		Performance performance = skated(List.of(JudgedElement.of(1, "ME4", 0), JudgedElement.of(2, "AC2", -1)));
		assertThat(PointsTabulation.score(BY_ELEMENTS, performance).working())
			.contains("Elements: 7.00 + 3.60 = 10.60");
	}

	/**
	 * Value of ISU Communication 2693, 2 April 2025, raised as a bonus would
	 * (constructed).
	 */
	@Test
	void aGivenBaseValueReplacesTheTables() {
		PerformanceScore.ElementScore score = PerformanceScore.ElementScore.of(BY_ELEMENTS,
				new JudgedElement(1, "ME4", JudgedElement.ElementWorth.COUNTS, new Points(770), List.of(1)));
		assertThat(score.base()).hasToString("7.70");
		assertThat(score.score()).hasToString("8.40");
	}

	@Test
	void whatDoesNotFitTheRulesIsRefused() {
		assertThat(refusal(() -> standing(BY_ELEMENTS, A, B, A)).code()).isEqualTo("duplicate-entry");
		assertThat(refusal(() -> standing(PublishedRules.SHORT, A)).code()).isEqualTo("component-missing");
		assertThat(refusal(() -> standing(BY_ELEMENTS, skated(List.of(JudgedElement.of(1, "XY9", 1))))).code())
			.isEqualTo("unknown-code");
		assertThat(refusal(() -> standing(BY_ELEMENTS, skated(List.of(JudgedElement.of(1, "ME4", 6))))).code())
			.isEqualTo("grade-out-of-range");
		assertThat(refusal(() -> standing(BY_ELEMENTS,
				Performance.skated("A", List.of(), List.of(JudgedComponent.of("Timing", 500)), List.of())))
			.code()).isEqualTo("unknown-component");
		Performance two = Performance.skated("T", List.of(), List.of(JudgedComponent.of("Composition", 500, 500)),
				List.of());
		assertThat(refusal(() -> standing(BY_ELEMENTS, A, two))).hasMessageContaining("'T'")
			.extracting("code")
			.isEqualTo("uneven-panel");
	}

	@Test
	void performancesAreChecked() {
		assertThat(refusal(() -> performance(" ", "1.00", "1.00")).code()).isEqualTo("entry-missing");
		assertThat(refusal(() -> Performance.without("A", EntryStatus.SKATED)).code()).isEqualTo("no-marks");
		assertThat(
				refusal(() -> new Performance("A", EntryStatus.WITHDRAWN, A.elements(), List.of(), List.of())).code())
			.isEqualTo("marks-without-performance");
		assertThat(refusal(() -> new Performance("A", EntryStatus.NOT_FINISHED, List.of(), List.of(),
				List.of(DeductionRule.Deduction.of("fall", new Points(100)))))
			.code()).isEqualTo("marks-without-performance");
		assertThat(
				refusal(() -> new Performance("A", EntryStatus.WITHDRAWN, List.of(), A.components(), List.of())).code())
			.isEqualTo("marks-without-performance");
		assertThat(refusal(() -> skated(Collections.nCopies(2, JudgedElement.of(1, "ME4", 1)))).code())
			.isEqualTo("duplicate-element");
		assertThat(refusal(
				() -> Performance.skated("A", List.of(), Collections.nCopies(2, A.components().get(0)), List.of()))
			.code()).isEqualTo("duplicate-component");
		assertThat(refusal(() -> skated(List.of(JudgedElement.of(1, "ME4", 1, 2)))).code()).isEqualTo("uneven-panel");
		List<DeductionRule.Deduction> many = new ArrayList<>(
				Collections.nCopies(100, DeductionRule.Deduction.of("fall", new Points(1))));
		assertThat(Performance.skated("A", A.elements(), A.components(), many).deductions()).hasSize(100);
		many.add(many.get(0));
		assertThat(refusal(() -> Performance.skated("A", A.elements(), A.components(), many)).code())
			.isEqualTo("too-many-deductions");
	}

	@Test
	void aPanelHasNinetyNineJudgesAtMost() {
		Integer[] most = Collections.nCopies(99, 1000).toArray(Integer[]::new);
		Integer[] more = Collections.nCopies(100, 1000).toArray(Integer[]::new);
		assertThat(
				PointsTabulation
					.score(BY_ELEMENTS,
							Performance.skated("A", List.of(), List.of(JudgedComponent.of("Composition", most)),
									List.of()))
					.total())
			.hasToString("10.00");
		assertThat(refusal(
				() -> Performance.skated("A", List.of(), List.of(JudgedComponent.of("Composition", more)), List.of()))
			.code()).isEqualTo("panel-out-of-range");
	}

	private static Performance skated(List<JudgedElement> elements) {
		return Performance.skated("A", elements, A.components(), List.of());
	}

	/**
	 * Scales: grades -5 to +5, ISU Communication 2693; components 0.25 to 10.00 in
	 * quarters (encyclopaedia article on the sport, section on judging).
	 */
	@Test
	void elementsAndComponentsAreChecked() {
		assertThat(List.of(0, 101))
			.allSatisfy((number) -> assertThat(refusal(() -> JudgedElement.of(number, "ME4", 1)).code())
				.isEqualTo("element-number-out-of-range"));
		assertThat(JudgedElement.of(100, "ME4", 1).number()).isEqualTo(100);
		assertThat(refusal(() -> JudgedElement.of(1, " ", 1)).code()).isEqualTo("code-missing");
		assertThat(refusal(() -> JudgedElement.of(1, "ME4", null, null)).code()).isEqualTo("no-grades");
		assertThat(List.of(new Points(-1), new Points(100_001)))
			.allSatisfy((base) -> assertThat(refusal(() -> PointsFixtures.element(base)).code())
				.isEqualTo("value-out-of-range"));
		assertThat(refusal(() -> JudgedComponent.of(" ", 25)).code()).isEqualTo("component-missing");
		assertThat(refusal(() -> JudgedComponent.of("Timing", null, null)).code()).isEqualTo("no-component-marks");
		assertThat(List.of(0, 24, 26, 1025, -25))
			.allSatisfy((mark) -> assertThat(refusal(() -> JudgedComponent.of("Timing", 500, mark)).code())
				.isEqualTo("component-mark-out-of-range"));
		assertThat(JudgedComponent.of("Timing", 25, null, 1000).marks()).hasSize(3).containsNull();
	}

}
