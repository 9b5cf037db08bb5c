package rimebook.tabulation.points;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.TabulationException;
import rimebook.wording.Sentence;

/**
 * Two teams of a segment beside each other, whatever lies between them.
 *
 * @param ahead the better one; of two on the same place the one named first
 * @param behind the other
 * @param tieBreak what parts equal totals
 */
public record ScorePair(PointsStanding.ScoredEntry ahead, PointsStanding.ScoredEntry behind,
		SegmentRules.TieBreak tieBreak) {

	/**
	 * Put two teams beside each other.
	 * @param standing of the segment
	 * @param one identifier
	 * @param other another identifier
	 * @return the pair
	 * @throws TabulationException {@code entry-unknown}, or {@code nothing-to-compare}
	 * where one has no place or both are the same
	 */
	public static ScorePair of(PointsStanding standing, String one, String other) {
		PointsStanding.ScoredEntry first = placed(standing, one);
		PointsStanding.ScoredEntry second = placed(standing, other);
		if (one.equals(other)) {
			throw TabulationException.nothingToCompare(one);
		}
		return (place(first) <= place(second)) ? new ScorePair(first, second, standing.tieBreak())
				: new ScorePair(second, first, standing.tieBreak());
	}

	private static PointsStanding.ScoredEntry placed(PointsStanding standing, String entry) {
		PointsStanding.ScoredEntry row = standing.row(entry).orElseThrow(() -> TabulationException.unknownEntry(entry));
		if (row.place() == null) {
			throw TabulationException.nothingToCompare(entry);
		}
		return row;
	}

	private static int place(PointsStanding.ScoredEntry row) {
		return Objects.requireNonNull(row.place());
	}

	/**
	 * Say in one sentence why one is ahead of the other.
	 * @param names turns an identifier into the name people know
	 * @return for example "A (1st) is ahead of B (3rd): 66.01 against 65.13 points, 0.88
	 * more; both 35.86 for the elements; 30.15 against 29.27 for the components, 0.88
	 * more."
	 */
	public Sentence words(UnaryOperator<String> names) {
		String first = names.apply(this.ahead.entry());
		String second = names.apply(this.behind.entry());
		return (place(this.ahead) == place(this.behind))
				? Sentence.of("score.pair.level", first, second, place(this.ahead), figures())
				: Sentence.of("score.pair.ahead", first, place(this.ahead), second, place(this.behind), figures(),
						decision());
	}

	private Sentence figures() {
		PerformanceScore own = score(this.ahead);
		PerformanceScore theirs = score(this.behind);
		Sentence deducted = own.deducted().equals(theirs.deducted()) ? Sentence.NONE : Sentence
			.of("score.pair.deducted", ScoreWords.words(own.deducted()), ScoreWords.words(theirs.deducted()));
		return Sentence.of("score.pair.figures", against("total", own.total(), theirs.total()),
				against("elements", own.elementPoints(), theirs.elementPoints()),
				against("components", own.componentPoints(), theirs.componentPoints()), deducted);
	}

	private static PerformanceScore score(PointsStanding.ScoredEntry row) {
		return Objects.requireNonNull(row.score());
	}

	private static Sentence against(String what, Points own, Points theirs) {
		int compared = own.compareTo(theirs);
		if (compared == 0) {
			return Sentence.of("score.pair.both", ScoreWords.words(own), named(what));
		}
		return (compared > 0)
				? Sentence.of("score.pair.more", ScoreWords.words(own), ScoreWords.words(theirs), named(what),
						ScoreWords.words(own.minus(theirs)))
				: Sentence.of("score.pair.less", ScoreWords.words(own), ScoreWords.words(theirs), named(what),
						ScoreWords.words(theirs.minus(own)));
	}

	private static Sentence named(String what) {
		return Sentence.of("score.pair." + what);
	}

	private Sentence decision() {
		if (!score(this.ahead).total().equals(score(this.behind).total())) {
			return Sentence.NONE;
		}
		boolean byElements = this.tieBreak.criterion().filter(Criterion.ELEMENT_POINTS::equals).isPresent();
		return Sentence.of(byElements ? "score.pair.elements-decide" : "score.pair.components-decide");
	}

	/**
	 * Put the elements and components beside each other.
	 * @return one line for each, for example "1. I4+pi3 8.54 | I4+pi2 7.90"
	 */
	public List<String> lines() {
		return new PairLines(score(this.ahead), score(this.behind)).lines();
	}

}
