package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

/**
 * One element as called, with what the judges have given for it so far.
 *
 * @param key names the element on its sheet whatever is inserted before it
 * @param code as called
 * @param worth whether it counts
 * @param state how far the technical panel is with it
 * @param grades of each judge in the panel's order
 */
public record CalledElement(int key, String code, ElementWorth worth, ElementState state, List<JudgeGrade> grades) {

	public CalledElement {
		grades = List.copyOf(grades);
	}

	static CalledElement of(int key, String code, ElementWorth worth, int judges) {
		return new CalledElement(key, code, worth, ElementState.CALLED, Collections.nCopies(judges, JudgeGrade.NONE));
	}

	/**
	 * Return whether the element is still on the list.
	 * @return {@code false} for a deleted one
	 */
	public boolean isOnTheList() {
		return this.state != ElementState.DELETED;
	}

	boolean needsGrades() {
		return isOnTheList() && this.worth == ElementWorth.COUNTS;
	}

	boolean owesGrade(int judge) {
		return needsGrades() && this.grades.get(judge - 1).state() != GradeState.GIVEN;
	}

	CalledElement in(ElementState other) {
		return new CalledElement(this.key, this.code, this.worth, other, this.grades);
	}

	/** Replace the call; grades given to another element have to be confirmed. */
	CalledElement changed(String otherCode, ElementWorth otherWorth) {
		boolean same = ElementCode.elementOf(this.code).equals(ElementCode.elementOf(otherCode))
				&& this.worth == otherWorth;
		return new CalledElement(this.key, otherCode, otherWorth, this.state,
				same ? this.grades : this.grades.stream().map(JudgeGrade::questioned).toList());
	}

	CalledElement graded(int judge, int grade) {
		return new CalledElement(this.key, this.code, this.worth, this.state,
				IntStream.rangeClosed(1, this.grades.size())
					.mapToObj((seat) -> (seat == judge) ? JudgeGrade.given(grade) : this.grades.get(seat - 1))
					.toList());
	}

	JudgedElement judged(int number, Set<Integer> absent) {
		List<@Nullable Integer> given = new ArrayList<>();
		for (int judge = 1; judge <= this.grades.size(); judge++) {
			given.add(absent.contains(judge) ? null : this.grades.get(judge - 1).grade());
		}
		return new JudgedElement(number, this.code, this.worth, null, given);
	}

}
