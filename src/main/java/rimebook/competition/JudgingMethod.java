package rimebook.competition;

import java.util.Map;
import java.util.regex.Pattern;

import com.fasterxml.jackson.annotation.JsonValue;

import rimebook.shared.RuleViolationException;
import rimebook.tabulation.PlacementRules;

/**
 * How an event is judged: by placing teams against each other, by points, or in a way of
 * which this module knows no more than its name. A way is offered for events where it is
 * a bean; {@link JudgingMethods} has all of them.
 *
 * @param name what is stored and what messages are found by: capital letters and
 * underscores, 20 at most
 */
public record JudgingMethod(String name) {

	private static final Pattern NAME = Pattern.compile("[A-Z_]{1,20}");

	/** Two marks a judge become ordinals; the majority of ordinals decides. */
	public static final JudgingMethod MAJORITY = new JudgingMethod("MAJORITY");

	/** Two marks a judge become ordinals; teams are compared one by one. */
	public static final JudgingMethod ONE_BY_ONE = new JudgingMethod("ONE_BY_ONE");

	/** Grades of called elements and marks of components become points. */
	public static final JudgingMethod POINTS = new JudgingMethod("POINTS");

	private static final Map<JudgingMethod, PlacementRules.PlacementMethod> PLACEMENT = Map.of(MAJORITY,
			PlacementRules.PlacementMethod.MAJORITY, ONE_BY_ONE, PlacementRules.PlacementMethod.ONE_BY_ONE);

	/**
	 * A way of that name.
	 * @throws RuleViolationException {@code method-unknown} if no way can have it
	 */
	public JudgingMethod {
		if (!NAME.matcher(name).matches()) {
			throw JudgingMethods.unknown();
		}
	}

	/** As the constructor, for whoever reads one from text. */
	public static JudgingMethod valueOf(String name) {
		return new JudgingMethod(name);
	}

	/** Tell whether elements and components are judged, not places. */
	public boolean isPoints() {
		return equals(POINTS);
	}

	/** Tell whether two marks a judge become places. */
	public boolean isPlacement() {
		return PLACEMENT.containsKey(this);
	}

	/**
	 * The way in which ordinals become places.
	 * @throws IllegalStateException for judging without ordinals
	 */
	public PlacementRules.PlacementMethod placement() {
		PlacementRules.PlacementMethod placement = PLACEMENT.get(this);
		if (placement == null) {
			throw new IllegalStateException(this + " has no ordinals");
		}
		return placement;
	}

	@JsonValue
	@Override
	public String toString() {
		return this.name;
	}

}
