package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;

import rimebook.tabulation.Criterion;

/**
 * The score of one performance with everything it was made of. Components are rounded
 * after their factor and then added; deductions are points already.
 *
 * @param elements in the order skated
 * @param elementPoints their total
 * @param components in the order of the rules
 * @param componentPoints their total, each rounded after its factor
 * @param deductions as noted
 * @param deducted their total, not negative
 * @param total elements and components less deductions; 0.00 where it would be negative
 * and the rules have a floor
 */
public record PerformanceScore(List<ElementScore> elements, Points elementPoints, List<ComponentScore> components,
		Points componentPoints, List<Deduction> deductions, Points deducted, Points total) {

	public PerformanceScore {
		elements = List.copyOf(elements);
		components = List.copyOf(components);
		deductions = List.copyOf(deductions);
	}

	static PerformanceScore of(List<ElementScore> elements, List<ComponentScore> components, List<Deduction> deductions,
			boolean flooredAtZero) {
		Points elementPoints = Points.sum(elements.stream().map(ElementScore::score).toList());
		Points componentPoints = Points.sum(components.stream().map(ComponentScore::points).toList());
		Points deducted = Points.sum(deductions.stream().map(Deduction::points).toList());
		Points exact = elementPoints.plus(componentPoints).minus(deducted);
		Points total = (flooredAtZero && exact.compareTo(Points.ZERO) < 0) ? Points.ZERO : exact;
		return new PerformanceScore(elements, elementPoints, components, componentPoints, deductions, deducted, total);
	}

	/** Return the figure that a criterion looks at. */
	Points points(Criterion criterion) {
		return (criterion == Criterion.ELEMENT_POINTS) ? this.elementPoints : this.componentPoints;
	}

	/**
	 * Return the sum of the base values that count.
	 * @return as sheets print it below the elements
	 */
	public Points basePoints() {
		return Points.sum(this.elements.stream().map(ElementScore::base).toList());
	}

	/**
	 * Show how the total was made.
	 * @return one line for each element, component and deduction, and one for each total
	 */
	public List<String> working() {
		List<String> lines = new ArrayList<>();
		this.elements.forEach((element) -> lines.add(element.working()));
		lines.add("Elements: " + sum(this.elements.stream().map(ElementScore::score).toList(), this.elementPoints));
		this.components.forEach((component) -> lines.add(component.working()));
		lines.add("Components: "
				+ sum(this.components.stream().map(ComponentScore::points).toList(), this.componentPoints));
		this.deductions.forEach((deduction) -> lines.add(deduction.words()));
		lines.add(lastLine());
		return lines;
	}

	private static String sum(List<Points> parts, Points sum) {
		return (parts.size() < 2) ? sum.toString() : Points.terms(parts) + " = " + sum;
	}

	private String lastLine() {
		Points exact = this.elementPoints.plus(this.componentPoints).minus(this.deducted);
		return "Total: " + this.elementPoints + " + " + this.componentPoints + " - " + this.deducted + " = " + exact
				+ (exact.equals(this.total) ? "" : ", not below 0.00");
	}

}
