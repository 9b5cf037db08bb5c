package rimebook.points;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import rimebook.competition.CompetitionFixtures;
import rimebook.performances.PerformanceId;
import rimebook.shared.RuleViolationException;
import rimebook.tabulation.points.JudgedElement;
import rimebook.tabulation.points.ValueTable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class EditedListTests {

	private static final ValueTable VALUES = CompetitionFixtures.pointsRules().values();

	private final List<CalledElement> seen = list("I4+pi3", "ME4", "NHE3+s4");

	private static List<CalledElement> list(String... codes) {
		return IntStream.range(0, codes.length)
			.mapToObj((i) -> new CalledElement(id(i), i + 1, codes[i], JudgedElement.ElementWorth.COUNTS, null, false))
			.toList();
	}

	private static UUID id(int index) {
		return new UUID(7, index);
	}

	@Test
	void aCallComesLastAndAnInsertedOneBeforeItsElement() {
		assertThat(codes(edit(TechnicalDesk.Act.CALL, null, "AC2"))).containsExactly("I4+pi3", "ME4", "NHE3+s4", "AC2");
		List<ElementCalls.CallElements.Call> inserted = edit(TechnicalDesk.Act.INSERT, 1, "AC2");
		assertThat(codes(inserted)).containsExactly("I4+pi3", "AC2", "ME4", "NHE3+s4");
		assertThat(inserted).extracting(ElementCalls.CallElements.Call::element)
			.containsExactly(id(0), null, id(1), id(2));
	}

	@Test
	void otherCodesKeepTheIdentityButNoOtherBaseValue() {
		List<CalledElement> based = List
			.of(new CalledElement(id(0), 1, "ME4", JudgedElement.ElementWorth.COUNTS, 550, true));
		ElementCalls.CallElements.Call changed = new EditedList(based, List.of(), VALUES)
			.apply(new TechnicalDesk.Edit(new PerformanceId(id(9)), 1, TechnicalDesk.Act.CODE, id(0), "TwE3"))
			.get(0);
		assertThat(changed).isEqualTo(
				new ElementCalls.CallElements.Call(id(0), "TwE3", JudgedElement.ElementWorth.COUNTS, null, true));
		assertThat(new EditedList(based, List.of(), VALUES)
			.apply(new TechnicalDesk.Edit(new PerformanceId(id(9)), 1, TechnicalDesk.Act.REVIEW, id(0), ""))
			.get(0))
			.isEqualTo(new ElementCalls.CallElements.Call(id(0), "ME4", JudgedElement.ElementWorth.COUNTS, 550, false));
	}

	@ParameterizedTest(name = "{0} {1} of element {2} makes {3}")
	@CsvSource(textBlock = """
			LEVEL,     3, 1, ME3
			LEVEL,     B, 1, MEB
			LEVEL,     1, 0, I1+pi3
			PART,      B, 0, I4+piB
			PART,     '', 0, I4
			PART,     '', 2, NHE3
			DOWNGRADE,'', 1, ME4<
			CODE,    GL2, 1, GL2
			""")
	void oneThingAboutACodeIsChanged(TechnicalDesk.Act act, String value, int element, String expected) {
		assertThat(edit(act, element, value).get(element).code()).isEqualTo(expected);
	}

	@ParameterizedTest(name = "{0} {1} of {2}")
	@CsvSource(quoteCharacter = '"', delimiter = '|',
			textBlock = """
					LEVEL     | 4  | AC2     | The table of values has no AC4.
					LEVEL     | 4  | NHE3    | The table of values has no NHE4; it has NHE4+sB, NHE4+s1, NHE4+s2, NHE4+s3, NHE4+s4.
					LEVEL     | 7  | ME3     | '7' is no level; it is B or 1 to 4.
					PART      | 2  | ME3     | ME has no additional part in the table of values.
					PART      | "" | NHE4+s4 | The table of values has no NHE4; it has NHE4+sB, NHE4+s1, NHE4+s2, NHE4+s3, NHE4+s4.
					DOWNGRADE | "" | TwE3    | The table of values has no downgrade of TwE3.
					DOWNGRADE | "" | SySp    | SySp has no level yet; give it one first.
					CODE      | "" | ME3     | The field 'value' is empty; please fill it in.
					EARLIER   | "" | ME3     | It is the first element already.
					LATER     | "" | ME3     | It is the last element already.
					""")
	void whatTheTableDoesNotHaveIsRefused(TechnicalDesk.Act act, String value, String code, String sentence) {
		assertThatExceptionOfType(RuleViolationException.class)
			.isThrownBy(() -> new EditedList(list(code), List.of(), VALUES)
				.apply(new TechnicalDesk.Edit(new PerformanceId(id(9)), 1, act, id(0), value)))
			.withMessage(sentence);
	}

	@Test
	void downgradesGoRound() {
		CodeChange change = new CodeChange(VALUES);
		assertThat(change.downgrade("GL3")).isEqualTo("GL3<");
		assertThat(change.downgrade("GL3<")).isEqualTo("GL3<<");
		assertThat(change.downgrade("GL3<<")).isEqualTo("GL3");
		assertThat(change.canDowngrade("GLB")).isFalse();
	}

	@Test
	void theKeysOfACodeAreThoseOfTheTable() {
		CodeChange change = new CodeChange(VALUES);
		assertThat(TechnicalDesk.CodeOptions.of("AC2", change))
			.isEqualTo(new TechnicalDesk.CodeOptions("B12", "", false, false));
		assertThat(TechnicalDesk.CodeOptions.of("NHE3", change))
			.isEqualTo(new TechnicalDesk.CodeOptions("B123", "B1234", false, false));
		assertThat(TechnicalDesk.CodeOptions.of("NHE4+s1", change))
			.isEqualTo(new TechnicalDesk.CodeOptions("B1234", "B1234", false, false));
		assertThat(TechnicalDesk.CodeOptions.of("I2+pi2", change))
			.isEqualTo(new TechnicalDesk.CodeOptions("B1234", "B1234", true, false));
		assertThat(TechnicalDesk.CodeOptions.of("ME1<<", change))
			.isEqualTo(new TechnicalDesk.CodeOptions("1234", "", false, true));
		assertThat(TechnicalDesk.CodeOptions.of("SySp", change))
			.isEqualTo(new TechnicalDesk.CodeOptions("B1234", "", false, false));
	}

	@Test
	void worthIsSwitchedOnAndOff() {
		assertThat(edit(TechnicalDesk.Act.NO_VALUE, 1, "").get(1).worth())
			.isEqualTo(JudgedElement.ElementWorth.NO_VALUE);
		List<CalledElement> many = List
			.of(new CalledElement(id(0), 1, "ME4", JudgedElement.ElementWorth.TOO_MANY, null, false));
		assertThat(new EditedList(many, List.of(), VALUES)
			.apply(new TechnicalDesk.Edit(new PerformanceId(id(9)), 1, TechnicalDesk.Act.TOO_MANY, id(0), ""))
			.get(0)
			.worth()).isEqualTo(JudgedElement.ElementWorth.COUNTS);
	}

	@Test
	void elementsAreMovedTakenOutAndComeBack() {
		assertThat(codes(edit(TechnicalDesk.Act.EARLIER, 2, ""))).containsExactly("I4+pi3", "NHE3+s4", "ME4");
		assertThat(codes(edit(TechnicalDesk.Act.LATER, 0, ""))).containsExactly("ME4", "I4+pi3", "NHE3+s4");
		assertThat(codes(edit(TechnicalDesk.Act.REMOVE, 1, ""))).containsExactly("I4+pi3", "NHE3+s4");
		assertThat(edit(TechnicalDesk.Act.UNDO, null, "")).singleElement()
			.isEqualTo(
					new ElementCalls.CallElements.Call(id(0), "TwE4", JudgedElement.ElementWorth.COUNTS, null, false));
		assertThatExceptionOfType(RuleViolationException.class).isThrownBy(() -> edit(TechnicalDesk.Act.REMOVE, 8, ""))
			.withMessage("Choose an element of the list first.");
	}

	@Test
	void whatTheOtherDeskDidIsSaid() {
		List<CalledElement> after = List.of(
				new CalledElement(id(2), 1, "NHE3+s4", JudgedElement.ElementWorth.NO_VALUE, null, false),
				new CalledElement(id(1), 2, "ME3", JudgedElement.ElementWorth.COUNTS, null, true),
				new CalledElement(id(5), 3, "AC2", JudgedElement.ElementWorth.COUNTS, null, false));
		assertThat(new ListDifference(this.seen, after).words()).containsExactly("AC2 called as element 3",
				"element 1 (I4+pi3) taken out", "element 2 (ME4) changed to ME3", "element 2 (ME3) put under review",
				"element 1 (NHE3+s4) now no value", "the order changed");
		assertThat(new ListDifference(this.seen, this.seen).words()).isEmpty();
	}

	@Test
	void thePlanIsFollowedByTheKindOfElement() {
		List<TechnicalDesk.PlannedLine> lines = TechnicalDesk.PlanProgress.of(List.of("I4+pi3", "ME4", "TwE3", "ME2"),
				List.of("I3", "AC2", "TwE4"));
		assertThat(lines).extracting(TechnicalDesk.PlannedLine::state)
			.containsExactly(TechnicalDesk.PlannedLine.State.CALLED, TechnicalDesk.PlannedLine.State.PASSED,
					TechnicalDesk.PlannedLine.State.CALLED, TechnicalDesk.PlannedLine.State.NEXT);
		assertThat(TechnicalDesk.PlanProgress.of(List.of("ME4", "ME2"), List.of("ME1")))
			.extracting(TechnicalDesk.PlannedLine::state)
			.containsExactly(TechnicalDesk.PlannedLine.State.CALLED, TechnicalDesk.PlannedLine.State.NEXT);
		assertThat(TechnicalDesk.PlanProgress.of(List.of("ME4"), List.of()))
			.extracting(TechnicalDesk.PlannedLine::state)
			.containsExactly(TechnicalDesk.PlannedLine.State.NEXT);
	}

	private List<ElementCalls.CallElements.Call> edit(TechnicalDesk.Act act, @Nullable Integer element, String value) {
		return new EditedList(this.seen, list("TwE4"), VALUES).apply(new TechnicalDesk.Edit(new PerformanceId(id(9)), 1,
				act, (element != null) ? id(element) : null, value));
	}

	private static List<String> codes(List<ElementCalls.CallElements.Call> calls) {
		return calls.stream().map(ElementCalls.CallElements.Call::code).toList();
	}

}
