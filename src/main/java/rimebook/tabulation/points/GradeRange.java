package rimebook.tabulation.points;

import java.util.List;
import java.util.stream.IntStream;

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

	String words() {
		return words(-this.most) + " to " + words(this.most);
	}

}
