package rimebook.tabulation.points;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.TabulationException;

import static org.assertj.core.api.Assertions.assertThat;

class PointsRulesTests {

	private static final PointsRules.RuleTexts TEXTS = PublishedRules.texts();

	private final PointsRules rules = PublishedRules.RULES;

	@Test
	void readsTheSettings() {
		assertThat(this.rules.id()).isEqualTo("synchronized-2025-26");
		assertThat(this.rules.title()).isEqualTo("Synchronized skating, points, season 2025-26");
		assertThat(this.rules.trimFrom()).isEqualTo(5);
		assertThat(this.rules.flooredAtZero()).isFalse();
		assertThat(this.rules.disqualifiedPlaces()).isEqualTo(DisqualifiedPlaces.CLOSE_ALL_PLACES);
		assertThat(this.rules.settings()).hasSize(7).allMatch((setting) -> !setting.value().isBlank());
	}

	@Test
	void everySegmentAndLevelHasItsFactorsAndTieBreak() {
		assertThat(this.rules.levels(SegmentKind.SHORT)).containsExactly("senior", "junior");
		assertThat(this.rules.levels(SegmentKind.FREE)).containsExactly("senior", "junior");
		SegmentRules free = this.rules.segment(SegmentKind.FREE, "junior");
		assertThat(free.components()).extracting(SegmentRules.ComponentRule::name)
			.containsExactly("Composition", "Presentation", "Skating Skills");
		assertThat(free.components()).extracting(SegmentRules.ComponentRule::factor).containsOnly(267);
		assertThat(free.tieBreak()).isEqualTo(SegmentRules.TieBreak.COMPONENTS);
		assertThat(PublishedRules.SHORT.components()).extracting(SegmentRules.ComponentRule::factor).containsOnly(133);
		assertThat(PublishedRules.SHORT.tieBreak()).isEqualTo(SegmentRules.TieBreak.ELEMENTS);
		assertThat(PublishedRules.SHORT.values()).isSameAs(this.rules.values());
	}

	@Test
	void anUnknownLevelIsRefused() {
		TabulationException refusal = PointsFixtures.refusal(() -> this.rules.segment(SegmentKind.FREE, "mixed"));
		assertThat(refusal.code()).isEqualTo("unknown-level");
		assertThat(refusal).hasMessageContaining("senior or junior");
	}

	@Test
	void whatIsFromMemoryIsListedForTheAdministrator() {
		assertThat(this.rules.toBeChecked()).hasSize(12 + 10)
			.contains("Composition, senior short: factor 1.33; from memory: look up the factor in the Technical Rules; "
					+ "five thirds of the published 0.80 for five components")
			.contains("Fall: 1.00 from 1, 2.00 from 2 (skaters down in one fall); "
					+ "from memory: some editions had a third step for many skaters")
			.contains("Late start: 1.00 per item (late starts); "
					+ "from memory: later still the team counts as withdrawn");
	}

	@Test
	void aSettingFromMemoryIsListedToo() {
		PointsRules doubtful = PointsRules.read(settings("floor-at-zero,no,practice", "floor-at-zero,yes,from memory"));
		assertThat(doubtful.flooredAtZero()).isTrue();
		assertThat(doubtful.toBeChecked()).hasSize(23)
			.first()
			.isEqualTo("floor-at-zero is yes; from memory: no source seen has a floor; an organiser's rules may");
	}

	@Test
	void whatIsPublishedIsNotListed() {
		PointsRules published = PointsRules.read(new PointsRules.RuleTexts(TEXTS.settings(), TEXTS.values(),
				TEXTS.components().replace("from memory", "published"),
				TEXTS.deductions().replace("from memory", "practice"), TEXTS.elements()));
		assertThat(published.toBeChecked()).isEmpty();
		assertThat(published.nameOf("ME4")).isEqualTo("move element, level 4");
	}

	@Test
	void levelsGoByTheKindOfSegment() {
		PointsRules novice = PointsRules.read(new PointsRules.RuleTexts(TEXTS.settings(), TEXTS.values(),
				TEXTS.components().replace("short,junior", "short,novice"), TEXTS.deductions(), TEXTS.elements()));
		assertThat(novice.levels(SegmentKind.SHORT)).containsExactly("senior", "novice");
		assertThat(novice.levels(SegmentKind.FREE)).containsExactly("senior", "junior");
	}

	@ParameterizedTest
	@CsvSource({ "tie-break-short,elements,none", "tie-break-free,components,none" })
	void tieBreaksAreData(String setting, String before, String after) {
		PointsRules changed = PointsRules.read(settings(setting + "," + before, setting + "," + after));
		assertThat(changed.tieBreaks()).containsValue(SegmentRules.TieBreak.NONE);
	}

	@ParameterizedTest
	@CsvSource({ "close-final,CLOSE_FINAL_PLACES", "leave-gaps,LEAVE_GAPS" })
	void treatmentOfTheDisqualifiedIsData(String word, DisqualifiedPlaces places) {
		assertThat(PointsRules.read(settings("close-all", word)).disqualifiedPlaces()).isEqualTo(places);
	}

	@Test
	void saysCodesInWords() {
		assertThat(this.rules.nameOf("ME4")).isEqualTo("move element, level 4");
		assertThat(this.rules.nameOf("GLB")).isEqualTo("group lift, basic level");
		assertThat(this.rules.nameOf("ME4<<")).isEqualTo("move element, level 4, downgraded twice");
		assertThat(this.rules.nameOf("ME4<")).isEqualTo("move element, level 4, downgraded once");
		assertThat(this.rules.nameOf("I4+pi3")).isEqualTo("intersection, level 4, with point of intersection, level 3");
		assertThat(this.rules.nameOf("ZZ4")).isEqualTo("ZZ4");
		assertThat(this.rules.nameOf("pi4")).isEqualTo("pi4");
		assertThat(this.rules.nameOf("I4+zz3")).isEqualTo("I4+zz3");
		assertThat(this.rules.nameOf("nothing")).isEqualTo("nothing");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			trim-from,5               | trim-from,five            | not-whole 7:2
			trim-from,5               | trim-from,-5              | not-whole 7:2
			tie-break-free,components | tie-break-free,lots       | not-a-choice 9:2
			floor-at-zero,no          | floor-at-zero,No          | not-a-choice 10:2
			close-all                 | close                     | not-a-choice 11:2
			floor-at-zero,no,practice | floor-at-zero,no,hearsay  | not-a-choice 10:3
			title,                    | id,                       | duplicate-value 6:1
			setting,value             | setting,worth             | column-missing 4:1
			""")
	void refusesBadSettingsAtTheirPlace(String before, String after, String refusal) {
		PointsRules.RuleTexts texts = settings(before, after);
		assertThat(PointsFixtures.refusalAt(() -> PointsRules.read(texts))).isEqualTo(refusal);
	}

	@Test
	void refusesAMissingSetting() {
		assertThat(PointsFixtures.refusal(() -> PointsRules.read(settings("trim-from", "trim"))))
			.hasMessage("The settings have no 'trim-from'.")
			.extracting("code")
			.isEqualTo("setting-missing");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			short,senior,Composition,1.33    | short,senior,Composition,0      | factor-out-of-range 4:3
			short,senior,Composition,1.33    | short,senior,Composition,100.01 | factor-out-of-range 4:3
			short,senior,Composition,1.33    | short,senior,Composition,high   | not-points 4:4
			short,senior,Composition,1.33    | long,senior,Composition,1.33    | not-a-choice 4:1
			short,senior,Composition,1.33    | short,senior,,1.33              | component-missing 4:3
			""")
	void refusesBadComponentsAtTheirPlace(String before, String after, String refusal) {
		PointsRules.RuleTexts texts = new PointsRules.RuleTexts(TEXTS.settings(), TEXTS.values(),
				TEXTS.components().replaceFirst(before, after), TEXTS.deductions(), TEXTS.elements());
		assertThat(PointsFixtures.refusalAt(() -> PointsRules.read(texts))).isEqualTo(refusal);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			fall,Fall,steps                     | fall,Fall,per item                   | deduction-steps 5:1
			fall,Fall,steps                     | fall,Fall,each                       | not-a-choice 5:3
			one fall,,1,1.00                    | one fall,,3,1.00                     | deduction-steps 5:1
			one fall,,1,1.00                    | one fall,,0,1.00                     | deduction-steps 5:1
			one fall,,1,1.00                    | one fall,,x,1.00                     | not-whole 5:6
			one fall,,1,1.00                    | one fall,,1,-1.00                    | deduction-steps 5:1
			one fall,,1,1.00                    | one fall,,1,1000.01                  | deduction-steps 5:1
			late-start,Late start,per item,late starts,,1 | late-start,Late,per item,x,,2 | deduction-steps 8:1
			late-start,Late start,per item,late starts,,1 | ,Late,per item,x,,1           | deduction-item-missing 8:1
			in excess,5,1                       | in excess,0,1                        | deduction-seconds 7:5
			in excess,5,1                       | in excess,five,1                     | not-whole 7:5
			""")
	void refusesBadDeductionsAtTheirPlace(String before, String after, String refusal) {
		PointsRules.RuleTexts texts = new PointsRules.RuleTexts(TEXTS.settings(), TEXTS.values(), TEXTS.components(),
				TEXTS.deductions().replaceFirst(before, after), TEXTS.elements());
		assertThat(PointsFixtures.refusalAt(() -> PointsRules.read(texts))).isEqualTo(refusal);
	}

	/** As written before there was the column: no unit is a span of time. */
	@Test
	void aTableOfDeductionsWithoutSecondsIsRead() {
		String earlier = TEXTS.deductions()
			.replace(",unit,seconds,", ",unit,")
			.replaceAll("(?m)^((?:[^,#]+,){4})\\d*,", "$1");
		PointsRules read = PointsRules.read(new PointsRules.RuleTexts(TEXTS.settings(), TEXTS.values(),
				TEXTS.components(), earlier, TEXTS.elements()));
		assertThat(read.deductions()).hasSameSizeAs(this.rules.deductions())
			.allMatch((rule) -> rule.unit().seconds().isEmpty());
		assertThat(read.deductions()).extracting(DeductionRule::words)
			.isEqualTo(this.rules.deductions().stream().map(DeductionRule::words).toList());
		assertThat(this.rules.deduction("time").orElseThrow().unit().seconds()).hasValue(5);
		assertThat(this.rules.deduction("fall").orElseThrow().unit().seconds()).isEmpty();
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			AC,element | AB,element | duplicate-value 4:1
			AC,element | AC,thing   | not-a-choice 4:2
			""")
	void refusesBadElementsAtTheirPlace(String before, String after, String refusal) {
		PointsRules.RuleTexts texts = new PointsRules.RuleTexts(TEXTS.settings(), TEXTS.values(), TEXTS.components(),
				TEXTS.deductions(), TEXTS.elements().replaceFirst(before, after));
		assertThat(PointsFixtures.refusalAt(() -> PointsRules.read(texts))).isEqualTo(refusal);
	}

	@Test
	void segmentRulesAreChecked() {
		SegmentRules fine = PublishedRules.SHORT;
		assertThat(PointsFixtures
			.refusal(() -> new SegmentRules(fine.values(), 2, fine.components(), SegmentRules.TieBreak.NONE, false,
					DisqualifiedPlaces.LEAVE_GAPS))
			.code()).isEqualTo("trim-from-out-of-range");
		assertThat(
				PointsFixtures.refusal(() -> SegmentRules.usual(fine.values(), List.of(), SegmentRules.TieBreak.NONE))
					.code())
			.isEqualTo("components-missing");
		assertThat(PointsFixtures
			.refusal(() -> SegmentRules.usual(fine.values(), Collections.nCopies(2, fine.components().get(0)),
					SegmentRules.TieBreak.NONE))
			.code()).isEqualTo("duplicate-component");
		assertThat(PointsFixtures
			.refusal(() -> SegmentRules.usual(fine.values(), Collections.nCopies(21, fine.components().get(0)),
					SegmentRules.TieBreak.NONE))
			.code()).isEqualTo("components-missing");
	}

	@Test
	void segmentRulesMayGoToTheirLimits() {
		List<SegmentRules.ComponentRule> most = IntStream.rangeClosed(1, 20)
			.mapToObj((number) -> new SegmentRules.ComponentRule("C" + number, (number == 1) ? 1 : 10_000,
					PointsFixtures.SOURCE))
			.toList();
		SegmentRules rules = new SegmentRules(PointsFixtures.VALUES, 3, most, SegmentRules.TieBreak.NONE, false,
				DisqualifiedPlaces.LEAVE_GAPS);
		assertThat(rules.components()).hasSize(20);
		assertThat(rules.trimFrom()).isEqualTo(3);
		assertThat(List.of(0, 10_001)).allSatisfy((factor) -> assertThat(
				PointsFixtures.refusal(() -> new SegmentRules.ComponentRule("C", factor, PointsFixtures.SOURCE)).code())
			.isEqualTo("factor-out-of-range"));
	}

	private static PointsRules.RuleTexts settings(String before, String after) {
		assertThat(TEXTS.settings()).contains(before);
		return new PointsRules.RuleTexts(TEXTS.settings().replace(before, after), TEXTS.values(), TEXTS.components(),
				TEXTS.deductions(), TEXTS.elements());
	}

}
