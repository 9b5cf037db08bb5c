package rimebook.results;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * The points of one performance with everything they are made of. All points, factors and
 * marks are in hundredths; grades are as given.
 *
 * @param total elements and components less deductions
 * @param elements points of all elements
 * @param base base values that count, added up
 * @param components points of all components, each after its factor
 * @param deducted points taken off, not negative
 */
public record Score(int total, int elements, int base, int components, int deducted, List<ElementLine> elementLines,
		List<ComponentLine> componentLines, List<DeductionLine> deductionLines) {

	public Score {
		elementLines = List.copyOf(elementLines);
		componentLines = List.copyOf(componentLines);
		deductionLines = List.copyOf(deductionLines);
	}

	/**
	 * One called element.
	 *
	 * @param number its place in the programme, from 1
	 * @param code as called
	 * @param name the code in words
	 * @param worth {@code COUNTS}, {@code NO_VALUE} or {@code TOO_MANY}
	 * @param base its base value, 0 without value
	 * @param grades of each judge in panel order
	 * @param mean of the points of the grades that count, rounded
	 * @param score base value and mean together
	 */
	public record ElementLine(int number, String code, String name, String worth, int base, List<Mark> grades, int mean,
			int score) {

		public ElementLine {
			grades = List.copyOf(grades);
		}

	}

	/**
	 * One component.
	 *
	 * @param mean of the marks that count, rounded
	 * @param points the mean times the factor, rounded
	 */
	public record ComponentLine(String name, int factor, List<Mark> marks, int mean, int points) {

		public ComponentLine {
			marks = List.copyOf(marks);
		}

	}

	/**
	 * What one judge gave in one line.
	 *
	 * @param given the grade, or the mark in hundredths; {@code null} where there is none
	 * @param use {@code COUNTED}, {@code DROPPED_HIGHEST}, {@code DROPPED_LOWEST} or
	 * {@code ABSENT}
	 */
	public record Mark(@Nullable Integer given, String use) {
	}

	/**
	 * One deduction.
	 *
	 * @param item its short name in the rule set
	 * @param name as on the sheet
	 * @param points taken off, not negative
	 */
	public record DeductionLine(String item, String name, int count, int points) {
	}

}
