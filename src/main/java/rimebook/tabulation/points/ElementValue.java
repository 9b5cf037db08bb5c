package rimebook.tabulation.points;

import java.util.List;
import java.util.stream.IntStream;

import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * One row of a table of values: what a called code is worth.
 *
 * @param code as called, for example {@code I4+pi3}
 * @param base points for the code itself
 * @param grades which grades the row has
 * @param points of each grade from the lowest to the highest, 0 among them
 */
public record ElementValue(String code, Points base, GradeRange grades, List<Points> points) {

	/** The highest base value, and the most a grade may add or take: 1000.00. */
	static final int MOST = 100_000;

	/**
	 * Check the row.
	 * @throws TabulationException {@code code-missing}, {@code value-out-of-range} or
	 * {@code values-not-rising}: a higher grade is worth less than a lower one, or grade
	 * 0 is worth anything
	 */
	public ElementValue {
		points = List.copyOf(points);
		if (code.isBlank()) {
			throw Refusal.blankCode();
		}
		if (!isBase(base) || !points.stream().allMatch((each) -> each.isBetween(-MOST, MOST))) {
			throw Refusal.valueOutOfRange(code);
		}
		if (points.size() != grades.grades().size() || !points.equals(points.stream().sorted().toList())
				|| !points.get(grades.most()).equals(Points.ZERO)) {
			throw Refusal.valuesNotRising(code, grades);
		}
	}

	/**
	 * Return whether an element may have a base value.
	 * @param base the value
	 * @return {@code true} for 0.00 to 1000.00
	 */
	public static boolean isBase(Points base) {
		return base.isBetween(0, MOST);
	}

	/**
	 * Return what a grade adds to the base value or takes from it.
	 * @param grade within the range of the row
	 * @return the points, 0.00 for grade 0
	 * @throws TabulationException {@code grade-out-of-range}
	 */
	public Points points(int grade) {
		if (!this.grades.contains(grade)) {
			throw Refusal.gradeOutOfRange(this.code, grade, this.grades);
		}
		return this.points.get(grade + this.grades.most());
	}

	/** Which grades of execution judges may give. */
	public enum GradeRange {

		/** -3 to +3, until the season 2017-18. */
		SEVEN_GRADES(3),

		/** -5 to +5, since the season 2018-19. */
		ELEVEN_GRADES(5);

		private final int most;

		GradeRange(int most) {
			this.most = most;
		}

		/**
		 * Return the highest grade; the lowest is its negative.
		 * @return 3 or 5
		 */
		public int most() {
			return this.most;
		}

		/**
		 * Return whether a judge may give a grade.
		 * @param grade the grade
		 * @return {@code true} within the range
		 */
		public boolean contains(int grade) {
			return grade >= -this.most && grade <= this.most;
		}

		/**
		 * Return every grade.
		 * @return ascending, 0 among them
		 */
		public List<Integer> grades() {
			return IntStream.rangeClosed(-this.most, this.most).boxed().toList();
		}

		/** Return the name of a grade's column: {@code -5 -> "m5"}, {@code 2 -> "p2"}. */
		static String column(int grade) {
			return ((grade < 0) ? "m" : "p") + Math.abs(grade);
		}

		/** Write a grade as spoken: {@code +2}, {@code 0}, {@code -1}. */
		static String words(int grade) {
			return (grade > 0) ? "+" + grade : String.valueOf(grade);
		}

		Sentence spoken() {
			return Sentence.of("tabulation.range", words(-this.most), words(this.most));
		}

	}

}
