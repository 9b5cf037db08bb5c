package rimebook.tabulation.points;

import rimebook.tabulation.Reason;
import rimebook.wording.Sentence;

/** The words of a segment under points judging. */
record ScoreWords(PerformanceScore score) implements Reason.ReasonWords {

	@Override
	public Sentence own(Reason reason) {
		Sentence less = this.score.deductions().isEmpty() ? Sentence.NONE
				: Sentence.of("score.own.less", words(this.score.deducted()));
		return Sentence.of("score.own", words(this.score.total()), words(this.score.elementPoints()),
				words(this.score.componentPoints()), less);
	}

	@Override
	public Sentence rivals(Reason.Comparison comparison) {
		return switch (comparison.criterion()) {
			case TOTAL_POINTS -> difference(comparison);
			case ELEMENT_POINTS -> sameTotal("score.same-total.elements", comparison);
			default -> sameTotal("score.same-total.components", comparison);
		};
	}

	/** "who had 66.01, 0.88 more". */
	static Sentence difference(Reason.Comparison comparison) {
		Points theirs = new Points(comparison.theirs());
		Points own = new Points(comparison.own());
		return (theirs.compareTo(own) > 0) ? Sentence.of("score.who-more", words(theirs), words(theirs.minus(own)))
				: Sentence.of("score.who-less", words(theirs), words(own.minus(theirs)));
	}

	/** "who had the same total but 34.90 for the elements". */
	static Sentence sameTotal(String key, Reason.Comparison comparison) {
		return Sentence.of(key, words(new Points(comparison.theirs())));
	}

	/** Points as the language writes them. */
	static Sentence words(Points points) {
		return Sentence.of("figure.points", points.hundredths());
	}

}
