package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Criterion;

/**
 * The score of one performance with everything it was made of. Components are rounded
 * after their factor and then added; deductions are points already.
 *
 * @param elements in the order skated
 * @param components in the order of the rules
 * @param deductions as noted
 * @param total elements and components less deductions; 0.00 where it would be negative
 * and the rules have a floor
 */
public record PerformanceScore(List<ElementScore> elements, List<ComponentScore> components,
		List<DeductionRule.Deduction> deductions, Points total) {

	public PerformanceScore {
		elements = List.copyOf(elements);
		components = List.copyOf(components);
		deductions = List.copyOf(deductions);
	}

	static PerformanceScore of(List<ElementScore> elements, List<ComponentScore> components,
			List<DeductionRule.Deduction> deductions, boolean flooredAtZero) {
		PerformanceScore exact = new PerformanceScore(elements, components, deductions, Points.ZERO);
		Points total = exact.elementPoints().plus(exact.componentPoints()).minus(exact.deducted());
		boolean below = flooredAtZero && total.compareTo(Points.ZERO) < 0;
		return below ? exact : new PerformanceScore(elements, components, deductions, total);
	}

	/**
	 * Add up the elements.
	 * @return their total
	 */
	public Points elementPoints() {
		return Points.sum(this.elements.stream().map(ElementScore::score).toList());
	}

	/**
	 * Add up the components.
	 * @return their total, each rounded after its factor
	 */
	public Points componentPoints() {
		return Points.sum(this.components.stream().map(ComponentScore::points).toList());
	}

	/**
	 * Add up the deductions.
	 * @return their total, not negative
	 */
	public Points deducted() {
		return Points.sum(this.deductions.stream().map(DeductionRule.Deduction::points).toList());
	}

	/** Return the figure that a criterion looks at. */
	Points points(Criterion criterion) {
		return (criterion == Criterion.ELEMENT_POINTS) ? elementPoints() : componentPoints();
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
		lines.add("Elements: " + sum(this.elements.stream().map(ElementScore::score).toList(), elementPoints()));
		this.components.forEach((component) -> lines.add(component.working()));
		lines.add(
				"Components: " + sum(this.components.stream().map(ComponentScore::points).toList(), componentPoints()));
		this.deductions.forEach((deduction) -> lines.add(deduction.words()));
		lines.add(lastLine());
		return lines;
	}

	private static String sum(List<Points> parts, Points sum) {
		return (parts.size() < 2) ? sum.toString() : Points.terms(parts) + " = " + sum;
	}

	private String lastLine() {
		Points exact = elementPoints().plus(componentPoints()).minus(deducted());
		return "Total: " + elementPoints() + " + " + componentPoints() + " - " + deducted() + " = " + exact
				+ (exact.equals(this.total) ? "" : ", not below 0.00");
	}

	/**
	 * What a component earned.
	 *
	 * @param rule the component and its factor
	 * @param panel how the marks were averaged; its mean is what sheets print
	 * @param points the mean times the factor, rounded
	 */
	public record ComponentScore(SegmentRules.ComponentRule rule, PanelMean panel, Points points) {

		static ComponentScore of(SegmentRules.ComponentRule rule, PanelMean panel) {
			return new ComponentScore(rule, panel, panel.mean().times(rule.factor()));
		}

		/**
		 * Write the product before it was rounded.
		 * @return with four decimals, for example {@code 9.7755}
		 */
		public String product() {
			return this.panel.mean().exactProduct(this.rule.factor()).toPlainString();
		}

		/**
		 * Show how the points were made.
		 * @return one sentence with every rounding step
		 */
		public String working() {
			return this.rule.name() + ": mean of the marks: " + this.panel.working() + "; " + this.panel.mean() + " x "
					+ this.rule.factorText() + " = " + product() + ", rounded " + this.points;
		}

	}

	/**
	 * What an element earned.
	 *
	 * @param element as judged
	 * @param base base value that counts, 0.00 for an element without value
	 * @param panel how the grades were averaged, as points; none without value
	 * @param score base value and mean together
	 */
	public record ElementScore(JudgedElement element, Points base, @Nullable PanelMean panel, Points score) {

		static ElementScore of(SegmentRules rules, JudgedElement element) {
			if (!element.counts()) {
				return new ElementScore(element, Points.ZERO, null, Points.ZERO);
			}
			ElementValue value = rules.values().value(element.code());
			Points base = (element.base() != null) ? element.base() : value.base();
			PanelMean panel = PanelMean.of(points(value, element.grades()), rules.trimFrom());
			return new ElementScore(element, base, panel, base.plus(panel.mean()));
		}

		private static List<@Nullable Points> points(ElementValue value, List<@Nullable Integer> grades) {
			List<@Nullable Points> points = new ArrayList<>();
			grades.forEach((grade) -> points.add((grade == null) ? null : value.points(grade)));
			return points;
		}

		/**
		 * Return what the grades added or took, averaged.
		 * @return 0.00 for an element without value
		 */
		public Points grade() {
			return (this.panel == null) ? Points.ZERO : this.panel.mean();
		}

		/**
		 * Show how the score was made.
		 * @return one sentence with every rounding step
		 */
		public String working() {
			String name = this.element.number() + ". " + this.element.code() + ": ";
			return (this.panel == null) ? name + this.element.worth().words() + ", 0.00"
					: name + "base value " + this.base + "; grades " + grades() + "; mean of their points: "
							+ this.panel.working() + "; " + Points.terms(List.of(this.base, this.panel.mean())) + " = "
							+ this.score;
		}

		private String grades() {
			return String.join(" ", this.element.grades().stream().map(ElementScore::words).toList());
		}

		private static String words(@Nullable Integer grade) {
			return (grade == null) ? "-" : ElementValue.GradeRange.words(grade);
		}

	}

}
