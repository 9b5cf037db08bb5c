package rimebook.tabulation.points;

import org.jspecify.annotations.Nullable;

/**
 * One judge's grade of one element while the performance is judged.
 *
 * @param grade as given, or none yet
 * @param state what the judge still owes
 */
public record JudgeGrade(@Nullable Integer grade, GradeState state) {

	static final JudgeGrade NONE = new JudgeGrade(null, GradeState.ASKED);

	static JudgeGrade given(int grade) {
		return new JudgeGrade(grade, GradeState.GIVEN);
	}

	/** A grade survives a change of the element, to be confirmed. */
	JudgeGrade questioned() {
		return (this.grade == null) ? this : new JudgeGrade(this.grade, GradeState.TO_CONFIRM);
	}

}
