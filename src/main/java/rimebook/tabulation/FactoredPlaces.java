package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

/** One team's places multiplied by the factors of their segments. */
record FactoredPlaces(EntryPlaces entry, List<@Nullable Integer> factored) {

	static FactoredPlaces of(CombinationRules rules, EntryPlaces entry) {
		List<@Nullable Integer> factored = new ArrayList<>();
		for (int i = 0; i < entry.places().size(); i++) {
			Integer place = entry.places().get(i);
			factored.add((place != null) ? place * rules.factors().get(i) : null);
		}
		return new FactoredPlaces(entry, factored);
	}

	int total() {
		return this.factored.stream().filter(Objects::nonNull).mapToInt(Integer::intValue).sum();
	}

	private int skated() {
		return (int) this.factored.stream().filter(Objects::nonNull).count();
	}

	boolean isComplete() {
		return skated() == this.factored.size();
	}

	boolean hasStarted() {
		return skated() > 0;
	}

	/** Number of the last segment with a place, from 1. */
	private int reached() {
		int reached = this.factored.size();
		while (this.factored.get(reached - 1) == null) {
			reached--;
		}
		return reached;
	}

	private int placeInReached() {
		return Objects.requireNonNull(this.entry.places().get(reached() - 1));
	}

	/** Return what is compared, for a team with one place at least. */
	List<Figures.Measure> measures(CombinationRules.IncompleteOrder order) {
		if (isComplete()) {
			return List.of(new Figures.Measure(Criterion.EVERY_SEGMENT, 1),
					new Figures.Measure(Criterion.FACTORED_TOTAL, total()),
					new Figures.Measure(Criterion.LAST_SEGMENT_PLACE, placeInReached()));
		}
		Figures.Measure incomplete = new Figures.Measure(Criterion.EVERY_SEGMENT, 0);
		Figures.Measure reached = new Figures.Measure(Criterion.SEGMENT_REACHED, reached());
		Figures.Measure place = new Figures.Measure(Criterion.PLACE_IN_SEGMENT_REACHED, placeInReached());
		Figures.Measure skated = new Figures.Measure(Criterion.SEGMENTS_SKATED, skated());
		Figures.Measure total = new Figures.Measure(Criterion.TOTAL_SO_FAR, total());
		return (order == CombinationRules.IncompleteOrder.LAST_SEGMENT)
				? List.of(incomplete, reached, place, skated, total)
				: List.of(incomplete, reached, skated, total, place);
	}

}
