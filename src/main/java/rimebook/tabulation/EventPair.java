package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;

import rimebook.wording.Sentence;

/**
 * Two teams of an event beside each other, whatever lies between them: every criterion of
 * the combination in turn until one decides.
 *
 * @param ahead the better one; of two on the same place the one named first
 * @param behind the other
 * @param steps as far as they were needed; of a shared place all of them, each equal
 */
public record EventPair(Side ahead, Side behind, List<PlacePair.CriterionStep> steps) {

	public EventPair {
		steps = List.copyOf(steps);
	}

	/**
	 * Put two teams of placement judging beside each other.
	 * @param rules the rules the standing was made with
	 * @param standing of the event
	 * @param one identifier
	 * @param other another identifier
	 * @return the pair
	 * @throws TabulationException {@code entry-unknown}, or {@code nothing-to-compare}
	 * where one has no place or both are the same
	 */
	public static EventPair of(CombinationRules rules, EventStanding standing, String one, String other) {
		return of(side(rules, standing, one), side(rules, standing, other));
	}

	private static Side side(CombinationRules rules, EventStanding standing, String entry) {
		EventStanding.EventRow row = standing.row(entry).orElseThrow(() -> TabulationException.unknownEntry(entry));
		return new Side(entry, placed(entry, row.place()),
				FactoredPlaces.of(rules, new EntryPlaces(entry, row.status(), row.places()))
					.measures(rules.incompleteOrder()));
	}

	/**
	 * Return a place that can be compared.
	 * @param entry identifier
	 * @param place its place, {@code null} for none
	 * @return the place
	 * @throws TabulationException {@code nothing-to-compare} where there is none
	 */
	public static int placed(String entry, @Nullable Integer place) {
		if (place == null) {
			throw TabulationException.nothingToCompare(entry);
		}
		return place;
	}

	/**
	 * Put two teams beside each other by the measures of another judging method.
	 * @param one the one
	 * @param other the other
	 * @return the pair
	 * @throws TabulationException {@code nothing-to-compare} where both are the same
	 */
	public static EventPair of(Side one, Side other) {
		if (one.entry().equals(other.entry())) {
			throw TabulationException.nothingToCompare(one.entry());
		}
		Side ahead = (one.place() <= other.place()) ? one : other;
		Side behind = (ahead == one) ? other : one;
		return new EventPair(ahead, behind, steps(ahead.measures(), behind.measures()));
	}

	/** Both run over the same criteria up to their first difference. */
	private static List<PlacePair.CriterionStep> steps(List<Figures.Measure> own, List<Figures.Measure> theirs) {
		List<PlacePair.CriterionStep> steps = new ArrayList<>();
		int most = Math.min(own.size(), theirs.size());
		for (int i = 0; i < most && steps.stream().allMatch(PlacePair.CriterionStep::isEqual); i++) {
			steps.add(new PlacePair.CriterionStep(own.get(i).criterion(), own.get(i).value(), theirs.get(i).value()));
		}
		return steps;
	}

	/**
	 * Say in one sentence why one is ahead of the other.
	 * @param names turns an identifier into the name people know
	 * @return for example "A (1st) is ahead of B (2nd): total of the factored places:
	 * both 3.0; place in the last segment: 1 against 2, the lower is better."
	 */
	public Sentence words(UnaryOperator<String> names) {
		String first = names.apply(this.ahead.entry());
		String second = names.apply(this.behind.entry());
		Sentence chain = this.steps.stream()
			.flatMap((step) -> words(step, first).stream())
			.reduce((before, next) -> Sentence.of("figure.series.semicolon", before, next))
			.orElse(Sentence.NONE);
		return (this.ahead.place() == this.behind.place())
				? Sentence.of("why.pair.level", first, second, this.ahead.place(), chain)
				: Sentence.of("why.pair.ahead", first, this.ahead.place(), second, this.behind.place(), chain);
	}

	/** That both have skated every segment, or neither has, goes without saying. */
	private static List<Sentence> words(PlacePair.CriterionStep step, String first) {
		if (step.criterion() == Criterion.EVERY_SEGMENT) {
			return step.isEqual() ? List.of() : List.of(Sentence.of("why.pair.only-complete", first));
		}
		return List.of(step.words());
	}

	/**
	 * One of the two.
	 *
	 * @param entry identifier
	 * @param place in the event, from 1
	 * @param measures in the order in which they are compared
	 */
	public record Side(String entry, int place, List<Figures.Measure> measures) {

		public Side {
			measures = List.copyOf(measures);
		}

	}

}
