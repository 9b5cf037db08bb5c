package rimebook.tabulation;

import java.util.stream.Stream;

import rimebook.wording.Sentence;

/** Words of the majority system. */
record MajorityWords(Figures.MajorityFigures figures, int judges) implements Reason.ReasonWords {

	@Override
	public Sentence own(Reason reason) {
		boolean byTotalOrdinals = needs(reason, Criterion.TOTAL_ORDINALS);
		boolean byTotalOfMajority = byTotalOrdinals || needs(reason, Criterion.TOTAL_OF_MAJORITY);
		return Sentence.of("why.majority.own", who(), Phrases.orBetter(this.figures.majorityPlace()),
				byTotalOfMajority
						? Sentence.of("why.majority.total-of-those", Phrases.plain(this.figures.totalOfMajority()))
						: Sentence.NONE,
				byTotalOrdinals ? Sentence.of("why.majority.total-of-all", Phrases.plain(this.figures.totalOrdinals()))
						: Sentence.NONE,
				this.figures.size());
	}

	private Sentence who() {
		if (this.judges == 1) {
			return Sentence.of("why.majority.only-judge");
		}
		return (this.figures.size() == this.judges)
				? Sentence.of("why.majority.all-judges", Phrases.number(this.judges)) : Sentence
					.of("why.majority.of-judges", Phrases.number(this.figures.size()), Phrases.number(this.judges));
	}

	private static boolean needs(Reason reason, Criterion criterion) {
		return !reason.sharedWith().isEmpty() || Stream.of(reason.better(), reason.worse())
			.anyMatch((comparison) -> comparison != null && comparison.criterion() == criterion);
	}

	@Override
	public Sentence rivals(Reason.Comparison comparison) {
		int theirs = comparison.theirs();
		return switch (comparison.criterion()) {
			case MAJORITY_PLACE -> Sentence.of("why.majority.whose-place", Phrases.orBetter(theirs));
			case SIZE_OF_MAJORITY -> Sentence.of("why.majority.who-size", Phrases.judges(theirs),
					Phrases.orBetter(this.figures.majorityPlace()));
			case TOTAL_OF_MAJORITY -> Sentence.of("why.majority.who-total-of-those", Phrases.plain(theirs));
			default -> Sentence.of("why.majority.who-total-of-all", Phrases.plain(theirs));
		};
	}

}
