package rimebook.tabulation.points;

import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import rimebook.tabulation.TabulationException;

/** The sentences of this package's refusals, each written once. */
final class Refusal {

	private Refusal() {
	}

	/** Return the first value that comes a second time. */
	static <T> Optional<T> repeated(Stream<T> values) {
		Set<T> seen = new HashSet<>();
		return values.filter((value) -> !seen.add(value)).findFirst();
	}

	private static TabulationException refused(String code, String sentence) {
		return TabulationException.refused(code, sentence);
	}

	static TabulationException notPoints(String text) {
		return refused("not-points", "'" + text + "' is not a number of points; expected at most seven digits and two "
				+ "decimals, for example 7.25.");
	}

	static TabulationException blankEntry() {
		return refused("entry-missing", "The entry must have an identifier that is not blank.");
	}

	static TabulationException duplicateEntry(String entry) {
		return refused("duplicate-entry", "Entry '" + entry + "' is listed more than once.");
	}

	static TabulationException noMarks(String entry) {
		return refused("no-marks", "Entry '" + entry
				+ "' has skated but has no marks; grades of its elements and marks of its components are expected.");
	}

	static TabulationException marksWithoutPerformance(String entry) {
		return refused("marks-without-performance",
				"Entry '" + entry + "' did not complete the programme but has marks or deductions; none are expected.");
	}

	static TabulationException unevenPanel(String entry) {
		return refused("uneven-panel", "Not every line of entry '" + entry
				+ "' has as many seats as the panel; one mark of each judge is expected, absent where one gave none.");
	}

	static TabulationException tooManyDeductions(String entry, int most) {
		return refused("too-many-deductions",
				"Entry '" + entry + "' has more than " + most + " deductions; expected that many at most.");
	}

	static TabulationException duplicateElement(String entry, int number) {
		return refused("duplicate-element",
				"Entry '" + entry + "' has two elements number " + number + "; each number is expected once.");
	}

	static TabulationException elementNumberOutOfRange(int number, int highest) {
		return refused("element-number-out-of-range",
				"The number of an element must be 1 to " + highest + "; got " + number + ".");
	}

	static TabulationException blankCode() {
		return refused("code-missing", "An element must have a code that is not blank.");
	}

	static TabulationException unknownCode(String code) {
		return refused("unknown-code", "The table of values has no code '" + code
				+ "'; expected one of its codes, or an element marked as without value.");
	}

	static TabulationException noGrades(int number, String code) {
		return refused("no-grades", "Element " + number + " ('" + code
				+ "') counts but no judge has graded it; expected one grade at least.");
	}

	static TabulationException gradeOutOfRange(String code, int grade, ElementValue.GradeRange range) {
		return refused("grade-out-of-range",
				"A grade of '" + code + "' is " + grade + "; expected a whole number from " + range.words() + ".");
	}

	static TabulationException valueOutOfRange(String code) {
		return refused("value-out-of-range",
				"The base value of '" + code + "' must be 0.00 to 1000.00, and a grade may add or take as much.");
	}

	static TabulationException valuesNotRising(String code, ElementValue.GradeRange range) {
		return refused("values-not-rising", "The points of '" + code + "' must rise from grade " + range.words()
				+ ", below 0.00 or at it for a negative grade and above or at it for a positive one.");
	}

	static TabulationException duplicateCode(String code) {
		return refused("duplicate-code", "The table of values has the code '" + code + "' more than once.");
	}

	static TabulationException blankComponent() {
		return refused("component-missing", "A component must have a name that is not blank.");
	}

	static TabulationException componentsMissing(int count, int most) {
		return refused("components-missing", "A segment has 1 to " + most + " components; got " + count + ".");
	}

	static TabulationException duplicateComponent(String name) {
		return refused("duplicate-component", "Component '" + name + "' is listed more than once.");
	}

	static TabulationException missingComponent(String entry, String name) {
		return refused("component-missing", "Entry '" + entry + "' has no marks for the component '" + name + "'.");
	}

	static TabulationException unknownComponent(String entry, String name) {
		return refused("unknown-component",
				"Entry '" + entry + "' has marks for '" + name + "', which is no component of this segment.");
	}

	static TabulationException noComponentMarks(String name) {
		return refused("no-component-marks",
				"No judge has marked the component '" + name + "'; expected one mark at least.");
	}

	static TabulationException componentMarkOutOfRange(String name, Points mark) {
		return refused("component-mark-out-of-range",
				"A mark of '" + name + "' is " + mark + "; expected 0.25 to 10.00 in steps of 0.25.");
	}

	static TabulationException factorOutOfRange(String name, int factor) {
		return refused("factor-out-of-range",
				"The factor of '" + name + "' is " + new Points(factor) + "; expected 0.01 to 100.00.");
	}

	static TabulationException trimFromOutOfRange(int marks, int least) {
		return refused("trim-from-out-of-range",
				"Two marks can be left out from " + least + " marks on; got " + marks + ".");
	}

	static TabulationException blankDeduction() {
		return refused("deduction-item-missing", "A deduction must have a name that is not blank.");
	}

	static TabulationException deductionOutOfRange(String item, int count, Points points) {
		return refused("deduction-out-of-range", "The deduction '" + item + "' counts " + count + " times, " + points
				+ " points in all; expected 1 to 1000 times and 0.00 to 1000.00 points.");
	}

	static TabulationException deductionSteps(String item) {
		return refused("deduction-steps", "The amounts of the deduction '" + item
				+ "' must be 0.00 to 1000.00 from ascending numbers, and a single one from 1 unless it goes by steps.");
	}

	static TabulationException deductionSeconds(String unit) {
		return refused("deduction-seconds",
				"One of '" + unit + "' must stand for at least 1 second, or for none where it is no span of time.");
	}

	static TabulationException placeOutOfRange(int place, int highest) {
		return refused("place-out-of-range", "A segment place must be 1 to " + highest + "; got " + place + ".");
	}

	static TabulationException totalOutOfRange(Points total) {
		return refused("total-out-of-range", "A segment total must lie within 1000000.00 of zero; got " + total + ".");
	}

	static TabulationException segmentsOutOfRange(int segments, int most) {
		return refused("segments-out-of-range", "An event has 1 to " + most + " segments; got " + segments + ".");
	}

	static TabulationException unevenSegments(String entry, int found, int expected) {
		return refused("uneven-segments", "Entry '" + entry + "' has totals for " + found + " segments; " + expected
				+ " are expected (none where it has no total).");
	}

	static TabulationException emptyTable(String name) {
		return refused("table-empty", "The table of " + name + " needs a header and at least one row.");
	}

	static TabulationException duplicateColumn(String name, String column) {
		return refused("duplicate-column", "The table of " + name + " has two columns '" + column + "'.");
	}

	static TabulationException missingColumn(String name, String column) {
		return refused("column-missing", "The table of " + name + " has no column '" + column + "'.");
	}

	static TabulationException unevenRow(String name, int found, int expected) {
		return refused("uneven-row", "A row of the table of " + name + " has " + found + " fields; expected " + expected
				+ ", one for each column.");
	}

	static TabulationException duplicateValue(String name, String column, String value) {
		return refused("duplicate-value",
				"The table of " + name + " has two rows with '" + value + "' as " + column + ".");
	}

	static TabulationException unclosedQuote() {
		return refused("quote-not-closed", "A quoted field has no quotation mark at its end.");
	}

	static TabulationException notWhole(String text) {
		return refused("not-whole", "'" + text + "' is not a whole number from 0 on.");
	}

	static TabulationException notAChoice(String text, Collection<String> choices) {
		return refused("not-a-choice", "'" + text + "' is not known here; expected "
				+ String.join(" or ", choices.stream().sorted().toList()) + ".");
	}

	static TabulationException codeMalformed(String code) {
		return refused("code-malformed",
				"'" + code + "' is not a code; expected an element and its level, for example ME4, I4+pi3 or ME4<.");
	}

	static TabulationException unknownLevel(String level, Collection<String> levels) {
		return refused("unknown-level", "The rules have no components for the level '" + level + "'; expected "
				+ String.join(" or ", levels) + ".");
	}

	static TabulationException missingSetting(String name) {
		return refused("setting-missing", "The settings have no '" + name + "'.");
	}

	static TabulationException nothingNeeded(String entry) {
		return refused("nothing-needed", "Entry '" + entry
				+ "' has no last segment before it in which a total could be needed for a place of the event.");
	}

}
