package rimebook.performances;

import java.util.List;

import rimebook.tabulation.points.Deduction;
import rimebook.tabulation.points.JudgedComponent;
import rimebook.tabulation.points.JudgedElement;

/**
 * Everything that the score of one performance is made of.
 *
 * @param elements as called, with the grade of each counting seat in the order of the
 * seats
 * @param components with the mark of each counting seat
 * @param deductions with their points by the rule set
 */
public record PointsSheet(List<JudgedElement> elements, List<JudgedComponent> components,
		List<Deduction> deductions) implements ClosedMarks {

	public PointsSheet {
		elements = List.copyOf(elements);
		components = List.copyOf(components);
		deductions = List.copyOf(deductions);
	}

}
