package rimebook.tabulation.points;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.TabulationException;

/**
 * Everything that the scores and places of one segment depend on.
 *
 * @param values what codes and grades are worth
 * @param trimFrom number of marks in a line from which one highest and one lowest are
 * left out
 * @param components in the order of the sheet, with their factors
 * @param tieBreak what parts equal totals
 * @param flooredAtZero whether deductions stop at a total of 0.00
 * @param disqualifiedPlaces what becomes of the place of a disqualified team
 */
public record SegmentRules(ValueTable values, int trimFrom, List<ComponentRule> components, TieBreak tieBreak,
		boolean flooredAtZero, DisqualifiedPlaces disqualifiedPlaces) {

	/** Number of marks from which two are left out, where nothing else is said. */
	public static final int USUAL_TRIM_FROM = 5;

	private static final int LEAST_TRIM_FROM = 3;

	private static final int MOST_COMPONENTS = 20;

	/**
	 * Check the rules.
	 * @throws TabulationException {@code trim-from-out-of-range},
	 * {@code components-missing} (none, or more than 20) or {@code duplicate-component}
	 */
	public SegmentRules {
		components = List.copyOf(components);
		if (trimFrom < LEAST_TRIM_FROM) {
			throw Refusal.trimFromOutOfRange(trimFrom, LEAST_TRIM_FROM);
		}
		if (components.isEmpty() || components.size() > MOST_COMPONENTS) {
			throw Refusal.componentsMissing(components.size(), MOST_COMPONENTS);
		}
		Refusal.repeated(components.stream().map(ComponentRule::name)).ifPresent((name) -> {
			throw Refusal.duplicateComponent(name);
		});
	}

	/**
	 * Return rules with the usual answer to every other question: two marks are left out
	 * from five on, no floor, the places of disqualified teams close.
	 * @param values what codes and grades are worth
	 * @param components with their factors
	 * @param tieBreak what parts equal totals
	 * @return the rules
	 */
	public static SegmentRules usual(ValueTable values, List<ComponentRule> components, TieBreak tieBreak) {
		return new SegmentRules(values, USUAL_TRIM_FROM, components, tieBreak, false,
				DisqualifiedPlaces.CLOSE_ALL_PLACES);
	}

	Optional<ComponentRule> component(String name) {
		return this.components.stream().filter((component) -> component.name().equals(name)).findFirst();
	}

	/**
	 * A programme component and what its panel mark is multiplied by.
	 *
	 * @param name as on the sheet
	 * @param factor hundredths ({@code 133 = 1.33})
	 * @param source where the factor comes from
	 */
	public record ComponentRule(String name, int factor, PointsRules.RuleSource source) {

		/** The highest factor: 100.00. */
		static final int HIGHEST_FACTOR = 10_000;

		/**
		 * Check the rule.
		 * @throws TabulationException {@code component-missing} or
		 * {@code factor-out-of-range}: not 0.01 to 100.00
		 */
		public ComponentRule {
			if (name.isBlank()) {
				throw Refusal.blankComponent();
			}
			if (factor < 1 || factor > HIGHEST_FACTOR) {
				throw Refusal.factorOutOfRange(name, factor);
			}
		}

		String factorText() {
			return new Points(this.factor).toString();
		}

	}

	/** What parts teams with equal totals in a segment. */
	public enum TieBreak {

		/** The higher total of the elements: usual in a short programme. */
		ELEMENTS(Criterion.ELEMENT_POINTS),

		/** The higher total of the factored components: usual in a free skating. */
		COMPONENTS(Criterion.COMPONENT_POINTS),

		/** Nothing: equal totals share the place. */
		NONE(null);

		private final Optional<Criterion> criterion;

		TieBreak(@Nullable Criterion criterion) {
			this.criterion = Optional.ofNullable(criterion);
		}

		Optional<Criterion> criterion() {
			return this.criterion;
		}

	}

}
