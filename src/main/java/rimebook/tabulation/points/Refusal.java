package rimebook.tabulation.points;

import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import rimebook.tabulation.EntryName;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/** The sentences of this package's refusals, each written once. */
final class Refusal {

	private Refusal() {
	}

	/** Return the first value that comes a second time. */
	static <T> Optional<T> repeated(Stream<T> values) {
		Set<T> seen = new HashSet<>();
		return values.filter((value) -> !seen.add(value)).findFirst();
	}

	private static TabulationException refused(String code, Sentence sentence) {
		return TabulationException.refused(code, sentence);
	}

	/** One of these, in their order. */
	private static Sentence or(Collection<String> choices) {
		return choices.stream()
			.map(Sentence::said)
			.reduce((one, other) -> Sentence.of("tabulation.or", one, other))
			.orElse(Sentence.NONE);
	}

	static TabulationException notPoints(String text) {
		return refused("not-points", Sentence.of("tabulation.not-points", text));
	}

	static TabulationException blankEntry() {
		return refused("entry-missing", Sentence.of("tabulation.entry-missing"));
	}

	static TabulationException duplicateEntry(String entry) {
		return refused("duplicate-entry", Sentence.of("tabulation.duplicate-entry", EntryName.first(entry)));
	}

	static TabulationException noMarks(String entry) {
		return refused("no-marks", Sentence.of("tabulation.no-marks", EntryName.first(entry)));
	}

	static TabulationException marksWithoutPerformance(String entry) {
		return refused("marks-without-performance",
				Sentence.of("tabulation.marks-without-performance", EntryName.first(entry)));
	}

	static TabulationException unevenPanel(String entry) {
		return refused("uneven-panel", Sentence.of("tabulation.uneven-panel", EntryName.within(entry)));
	}

	static TabulationException tooManyDeductions(String entry, int most) {
		return refused("too-many-deductions",
				Sentence.of("tabulation.too-many-deductions", EntryName.first(entry), most));
	}

	static TabulationException duplicateElement(String entry, int number) {
		return refused("duplicate-element",
				Sentence.of("tabulation.duplicate-element", EntryName.first(entry), number));
	}

	static TabulationException elementNumberOutOfRange(int number, int highest) {
		return refused("element-number-out-of-range",
				Sentence.of("tabulation.element-number-out-of-range", highest, number));
	}

	static TabulationException blankCode() {
		return refused("code-missing", Sentence.of("tabulation.code-missing"));
	}

	static TabulationException unknownCode(String code) {
		return refused("unknown-code", Sentence.of("tabulation.unknown-code", code));
	}

	static TabulationException noGrades(int number, String code) {
		return refused("no-grades", Sentence.of("tabulation.no-grades", number, code));
	}

	static TabulationException gradeOutOfRange(String code, int grade, ElementValue.GradeRange range) {
		return refused("grade-out-of-range", Sentence.of("tabulation.grade-out-of-range", code, grade, range.spoken()));
	}

	static TabulationException valueOutOfRange(String code) {
		return refused("value-out-of-range", Sentence.of("tabulation.value-out-of-range", code));
	}

	static TabulationException valuesNotRising(String code, ElementValue.GradeRange range) {
		return refused("values-not-rising", Sentence.of("tabulation.values-not-rising", code, range.spoken()));
	}

	static TabulationException duplicateCode(String code) {
		return refused("duplicate-code", Sentence.of("tabulation.duplicate-code", code));
	}

	static TabulationException blankComponent() {
		return refused("component-missing", Sentence.of("tabulation.component-missing"));
	}

	static TabulationException componentsMissing(int count, int most) {
		return refused("components-missing", Sentence.of("tabulation.components-missing", most, count));
	}

	static TabulationException duplicateComponent(String name) {
		return refused("duplicate-component", Sentence.of("tabulation.duplicate-component", name));
	}

	static TabulationException missingComponent(String entry, String name) {
		return refused("component-missing",
				Sentence.of("tabulation.no-marks-for-component", EntryName.first(entry), name));
	}

	static TabulationException unknownComponent(String entry, String name) {
		return refused("unknown-component", Sentence.of("tabulation.unknown-component", EntryName.first(entry), name));
	}

	static TabulationException noComponentMarks(String name) {
		return refused("no-component-marks", Sentence.of("tabulation.no-component-marks", name));
	}

	static TabulationException componentMarkOutOfRange(String name, Points mark) {
		return refused("component-mark-out-of-range",
				Sentence.of("tabulation.component-mark-out-of-range", name, mark.toString()));
	}

	static TabulationException factorOutOfRange(String name, int factor) {
		return refused("factor-out-of-range",
				Sentence.of("tabulation.component-factor-out-of-range", name, new Points(factor).toString()));
	}

	static TabulationException trimFromOutOfRange(int marks, int least) {
		return refused("trim-from-out-of-range", Sentence.of("tabulation.trim-from-out-of-range", least, marks));
	}

	static TabulationException blankDeduction() {
		return refused("deduction-item-missing", Sentence.of("tabulation.deduction-item-missing"));
	}

	static TabulationException deductionOutOfRange(String item, int count, Points points) {
		return refused("deduction-out-of-range",
				Sentence.of("tabulation.deduction-out-of-range", item, count, points.toString()));
	}

	static TabulationException deductionSteps(String item) {
		return refused("deduction-steps", Sentence.of("tabulation.deduction-steps", item));
	}

	static TabulationException deductionSeconds(String unit) {
		return refused("deduction-seconds", Sentence.of("tabulation.deduction-seconds", unit));
	}

	static TabulationException placeOutOfRange(int place, int highest) {
		return refused("place-out-of-range", Sentence.of("tabulation.segment-place-out-of-range", highest, place));
	}

	static TabulationException totalOutOfRange(Points total) {
		return refused("total-out-of-range", Sentence.of("tabulation.total-out-of-range", total.toString()));
	}

	static TabulationException segmentsOutOfRange(int segments, int most) {
		return refused("segments-out-of-range", Sentence.of("tabulation.segments-out-of-range", most, segments));
	}

	static TabulationException unevenSegments(String entry, int found, int expected) {
		return refused("uneven-segments",
				Sentence.of("tabulation.uneven-segments", EntryName.first(entry), found, expected));
	}

	static TabulationException emptyTable(Sentence name) {
		return refused("table-empty", Sentence.of("tabulation.table-empty", name));
	}

	static TabulationException duplicateColumn(Sentence name, String column) {
		return refused("duplicate-column", Sentence.of("tabulation.duplicate-column", name, column));
	}

	static TabulationException missingColumn(Sentence name, String column) {
		return refused("column-missing", Sentence.of("tabulation.column-missing", name, column));
	}

	static TabulationException unevenRow(Sentence name, int found, int expected) {
		return refused("uneven-row", Sentence.of("tabulation.uneven-row", name, found, expected));
	}

	static TabulationException duplicateValue(Sentence name, String column, String value) {
		return refused("duplicate-value", Sentence.of("tabulation.duplicate-value", name, value, column));
	}

	static TabulationException unclosedQuote() {
		return refused("quote-not-closed", Sentence.of("tabulation.quote-not-closed"));
	}

	static TabulationException notWhole(String text) {
		return refused("not-whole", Sentence.of("tabulation.not-whole", text));
	}

	static TabulationException notAChoice(String text, Collection<String> choices) {
		return refused("not-a-choice",
				Sentence.of("tabulation.not-a-choice", text, or(choices.stream().sorted().toList())));
	}

	static TabulationException codeMalformed(String code) {
		return refused("code-malformed", Sentence.of("tabulation.code-malformed", code));
	}

	static TabulationException unknownLevel(String level, Collection<String> levels) {
		return refused("unknown-level", Sentence.of("tabulation.unknown-level", level, or(levels)));
	}

	static TabulationException missingSetting(String name) {
		return refused("setting-missing", Sentence.of("tabulation.setting-missing", name));
	}

	static TabulationException nothingNeeded(String entry) {
		return refused("nothing-needed", Sentence.of("tabulation.nothing-needed", EntryName.first(entry)));
	}

}
