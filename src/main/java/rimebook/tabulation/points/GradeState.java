package rimebook.tabulation.points;

/** What a judge still owes for an element. */
public enum GradeState {

	/** The judge has not graded it yet. */
	ASKED,

	/** The judge has graded the element as it now stands. */
	GIVEN,

	/**
	 * The judge graded it before it was changed and has to confirm or change the grade.
	 */
	TO_CONFIRM

}
