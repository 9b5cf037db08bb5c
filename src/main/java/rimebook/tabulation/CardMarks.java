package rimebook.tabulation;

/**
 * The two marks one judge gave one team, in hundredths: {@code new CardMarks(560, 580)}
 * is 5.6 and 5.8. The marks already contain any deduction; nothing is subtracted here.
 * Where an event asks for one mark only, the second is 0.
 *
 * @param first required elements, technical merit
 * @param second presentation
 */
public record CardMarks(int first, int second) {

	/** The highest mark, 6.0. */
	public static final int HIGHEST = 600;

	/** The step between marks, 0.1. */
	public static final int STEP = 10;

	/**
	 * Check both marks.
	 * @throws TabulationException {@code first-mark-out-of-range} or
	 * {@code second-mark-out-of-range}: not 0.0 to 6.0 in steps of 0.1
	 */
	public CardMarks {
		check("first", first);
		check("second", second);
	}

	private static void check(String field, int mark) {
		if (mark < 0 || mark > HIGHEST || mark % STEP != 0) {
			throw TabulationException.markOutOfRange(field, mark);
		}
	}

	/**
	 * Return the total mark, which decides the judge's ordinals.
	 * @return first and second mark together, in hundredths
	 */
	public int total() {
		return this.first + this.second;
	}

}
