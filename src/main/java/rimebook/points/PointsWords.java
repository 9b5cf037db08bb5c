package rimebook.points;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import rimebook.tabulation.points.Points;

/** Grades and marks of points judging as people write them. */
public final class PointsWords {

	private static final Pattern GRADE = Pattern.compile("[+-]?\\d");

	private static final Pattern DECIMAL = Pattern.compile("\\d{1,4}(\\.\\d{1,2})?");

	private PointsWords() {
	}

	/** Write hundredths with two decimals: {@code 725 -> "7.25"}. */
	public static String of(int hundredths) {
		return new Points(hundredths).toString();
	}

	/** Write a grade with its sign: "+2", "0", "-1". */
	public static String grade(int grade) {
		return (grade > 0) ? "+" + grade : String.valueOf(grade);
	}

	/**
	 * Read a grade: {@code "2"}, {@code "+2"}, {@code "-1"}, {@code "−1"}; else empty.
	 */
	public static OptionalInt readGrade(String text) {
		String typed = text.strip().replace('−', '-').replace('–', '-');
		return GRADE.matcher(typed).matches() ? OptionalInt.of(Integer.parseInt(typed)) : OptionalInt.empty();
	}

	/** Read hundredths: {@code "7.25"}, {@code "7,5"}, {@code "7"}; else empty. */
	public static OptionalInt readHundredths(String text) {
		String typed = text.strip().replace(',', '.');
		return DECIMAL.matcher(typed).matches() ? OptionalInt.of(Points.parse(typed).hundredths())
				: OptionalInt.empty();
	}

	/** A card in words for the record: "1 +2, 2 0; Composition 7.25". */
	static String of(PointsMarks marks, List<CalledElement> elements) {
		String grades = elements.stream()
			.filter((element) -> marks.grade(element) != null)
			.map((element) -> element.number() + " " + element.code() + " "
					+ grade(Objects.requireNonNull(marks.grade(element))))
			.collect(Collectors.joining(", "));
		String components = marks.components()
			.entrySet()
			.stream()
			.map((component) -> component.getKey() + " " + of(component.getValue()))
			.collect(Collectors.joining(", "));
		return grades + "; " + components;
	}

}
