package rimebook.tabulation.points;

import java.util.Arrays;
import java.util.List;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

import rimebook.tabulation.TabulationException;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

/** Performances with given totals, and refusals looked at. */
final class PointsFixtures {

	static final PointsRules.RuleSource SOURCE = new PointsRules.RuleSource(PointsRules.RuleSource.Provenance.PRACTICE,
			"made up");

	static final ValueTable VALUES = PublishedRules.RULES.values();

	/** One component with factor 1.00, so that its mark is its points. */
	static final SegmentRules BY_ELEMENTS = rules(SegmentRules.TieBreak.ELEMENTS);

	static final SegmentRules BY_COMPONENTS = rules(SegmentRules.TieBreak.COMPONENTS);

	private PointsFixtures() {
	}

	static SegmentRules rules(SegmentRules.TieBreak tieBreak) {
		return SegmentRules.usual(VALUES, List.of(new SegmentRules.ComponentRule("Composition", 100, SOURCE)),
				tieBreak);
	}

	/**
	 * A performance with so much for elements and components, in points and hundredths.
	 */
	static Performance performance(String entry, String elements, String components,
			DeductionRule.Deduction... deductions) {
		return Performance.skated(entry, List.of(element(Points.parse(elements))),
				List.of(JudgedComponent.of("Composition", Points.parse(components).hundredths())), List.of(deductions));
	}

	static JudgedElement element(Points base) {
		return new JudgedElement(1, "AB2", JudgedElement.ElementWorth.COUNTS, base, List.of(0));
	}

	static PointsStanding standing(SegmentRules rules, Performance... performances) {
		return PointsTabulation.standing(rules, Arrays.asList(performances));
	}

	static List<String> places(PointsStanding standing) {
		return standing.rows().stream().map((row) -> row.place() + " " + row.entry()).toList();
	}

	static List<String> places(PointsEventStanding standing) {
		return standing.rows().stream().map((row) -> row.place() + " " + row.entry()).toList();
	}

	static TabulationException refusal(ThrowingCallable call) {
		return catchThrowableOfType(TabulationException.class, call);
	}

	/** Write a refusal as "code line:column". */
	static String refusalAt(ThrowingCallable call) {
		TabulationException refusal = refusal(call);
		TabulationException.TextPosition position = refusal.position().orElseThrow();
		return refusal.code() + " " + position.line() + ":" + position.column();
	}

}
