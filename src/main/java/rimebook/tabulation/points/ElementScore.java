package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

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
		return (grade == null) ? "-" : GradeRange.words(grade);
	}

}
