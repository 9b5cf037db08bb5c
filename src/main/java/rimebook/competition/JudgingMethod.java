package rimebook.competition;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.PlacementMethod;

/** How an event is judged: by placing teams against each other, or by points. */
public enum JudgingMethod {

	/** Two marks a judge become ordinals; the majority of ordinals decides. */
	MAJORITY(PlacementMethod.MAJORITY),

	/** Two marks a judge become ordinals; teams are compared one by one. */
	ONE_BY_ONE(PlacementMethod.ONE_BY_ONE),

	/** Grades of called elements and marks of components become points. */
	POINTS(null);

	private final Optional<PlacementMethod> placement;

	JudgingMethod(@Nullable PlacementMethod placement) {
		this.placement = Optional.ofNullable(placement);
	}

	/** Tell whether elements and components are judged, not places. */
	public boolean isPoints() {
		return this == POINTS;
	}

	/**
	 * The way in which ordinals become places.
	 * @throws IllegalStateException for points judging, which has no ordinals
	 */
	public PlacementMethod placement() {
		return this.placement.orElseThrow(() -> new IllegalStateException("Points judging has no ordinals"));
	}

}
