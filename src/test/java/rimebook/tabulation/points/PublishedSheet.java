package rimebook.tabulation.points;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.SegmentKind;

/**
 * One performance as its score sheet was published.
 *
 * @param segment competition and segment
 * @param entry identifier
 * @param rank in the segment
 * @param total of the segment
 * @param elementPoints total of the elements
 * @param componentPoints total of the factored components
 * @param deducted taken off
 * @param elements in the order skated
 * @param components in the order of the sheet
 */
record PublishedSheet(String segment, String entry, int rank, Points total, Points elementPoints,
		Points componentPoints, Points deducted, List<Element> elements, List<Component> components) {

	static Points points(String text) {
		return Points.parse(new BigDecimal(text).setScale(2).toPlainString());
	}

	SegmentKind kind() {
		return this.segment.toUpperCase().contains("SHORT") ? SegmentKind.SHORT : SegmentKind.FREE;
	}

	boolean isIceDance() {
		return this.segment.toUpperCase().contains("ICE DANCE");
	}

	/** Tell the season: autumn 2016 to spring 2017, or the one after. */
	String season() {
		boolean first = this.segment.contains("2016")
				|| this.segment.matches(".*(European|Four Continents|World Figure).*");
		return first ? "2016-17" : "2017-18";
	}

	Performance performance() {
		return Performance.skated(this.entry, this.elements.stream().map(Element::judged).toList(),
				this.components.stream().map(Component::judged).toList(),
				List.of(DeductionRule.Deduction.of("deductions", this.deducted)));
	}

	/** One line of the elements. */
	record Element(int number, String code, Points base, Points grade, Points score, List<@Nullable Integer> grades) {

		boolean hasValue() {
			return !this.base.equals(Points.ZERO) || !this.score.equals(Points.ZERO);
		}

		JudgedElement judged() {
			return new JudgedElement(this.number, this.code,
					hasValue() ? JudgedElement.ElementWorth.COUNTS : JudgedElement.ElementWorth.NO_VALUE, this.base,
					this.grades);
		}

	}

	/** One line of the components. */
	record Component(String name, Points factor, Points mean, List<@Nullable Points> marks) {

		JudgedComponent judged() {
			return new JudgedComponent(this.name, new ArrayList<>(this.marks));
		}

		SegmentRules.ComponentRule rule() {
			return new SegmentRules.ComponentRule(this.name, this.factor.hundredths(),
					new PointsRules.RuleSource(PointsRules.RuleSource.Provenance.PUBLISHED, "printed on the sheet"));
		}

	}

}
