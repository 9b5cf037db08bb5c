package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

import rimebook.wording.Sentence;

/**
 * Two teams of a segment under placement judging beside each other, whatever lies between
 * them: every criterion in turn until one decides.
 *
 * @param ahead the better one; of two on the same place the one named first
 * @param behind the other
 * @param steps as far as they were needed; of a shared place all of them, each equal
 */
public record PlacePair(PlacedEntry ahead, PlacedEntry behind, List<CriterionStep> steps) {

	public PlacePair {
		steps = List.copyOf(steps);
	}

	/**
	 * Put two teams beside each other.
	 * @param standing of the segment
	 * @param one identifier
	 * @param other another identifier
	 * @return the pair
	 * @throws TabulationException {@code entry-unknown}, or {@code nothing-to-compare}
	 * where one has no place or both are the same
	 */
	public static PlacePair of(SegmentStanding standing, String one, String other) {
		PlacedEntry first = placed(standing, one);
		PlacedEntry second = placed(standing, other);
		if (one.equals(other)) {
			throw TabulationException.nothingToCompare(one);
		}
		boolean inOrder = place(first) <= place(second);
		PlacedEntry ahead = inOrder ? first : second;
		PlacedEntry behind = inOrder ? second : first;
		return new PlacePair(ahead, behind, steps(ahead, behind));
	}

	private static PlacedEntry placed(SegmentStanding standing, String entry) {
		PlacedEntry row = standing.row(entry).orElseThrow(() -> TabulationException.unknownEntry(entry));
		if (row.place() == null) {
			throw TabulationException.nothingToCompare(entry);
		}
		return row;
	}

	private static int place(PlacedEntry row) {
		return Objects.requireNonNull(row.place());
	}

	private static List<CriterionStep> steps(PlacedEntry ahead, PlacedEntry behind) {
		List<Figures.Measure> own = Objects.requireNonNull(ahead.figures()).measures();
		List<Figures.Measure> theirs = Objects.requireNonNull(behind.figures()).measures();
		List<CriterionStep> steps = new ArrayList<>();
		for (int i = 0; i < own.size() && steps.stream().allMatch(CriterionStep::isEqual); i++) {
			steps.add(new CriterionStep(own.get(i).criterion(), own.get(i).value(), theirs.get(i).value()));
		}
		return steps;
	}

	/**
	 * Say in one sentence why one is ahead of the other.
	 * @param names turns an identifier into the name people know
	 * @return for example "A (1st) is ahead of B (3rd): majority place: both 2; judges at
	 * that place or better: 4 against 3, the higher is better."
	 */
	public Sentence words(UnaryOperator<String> names) {
		String first = names.apply(this.ahead.entry());
		String second = names.apply(this.behind.entry());
		Sentence chain = this.steps.stream()
			.map(CriterionStep::words)
			.reduce((before, next) -> Sentence.of("figure.series.semicolon", before, next))
			.orElse(Sentence.NONE);
		return (place(this.ahead) == place(this.behind))
				? Sentence.of("why.pair.level", first, second, place(this.ahead), chain)
				: Sentence.of("why.pair.ahead", first, place(this.ahead), second, place(this.behind), chain);
	}

	/**
	 * One criterion in the chain that parts two teams.
	 *
	 * @param criterion what is compared
	 * @param own value of the one, in the unit of the criterion
	 * @param theirs value of the other
	 */
	public record CriterionStep(Criterion criterion, int own, int theirs) {

		/**
		 * Return whether the next criterion has to be asked.
		 * @return {@code true} where both have the same value
		 */
		public boolean isEqual() {
			return this.own == this.theirs;
		}

		/**
		 * Say the step.
		 * @return for example "total of those ordinals: 9 against 10, the lower is
		 * better" or "majority place: both 2"
		 */
		public Sentence words() {
			Sentence name = CriterionWords.name(this.criterion);
			Sentence value = CriterionWords.value(this.criterion, this.own);
			if (isEqual()) {
				return Sentence.of("why.pair.both", name, value);
			}
			return Sentence.of(this.criterion.higherIsBetter() ? "why.pair.higher" : "why.pair.lower", name, value,
					CriterionWords.value(this.criterion, this.theirs));
		}

	}

}
