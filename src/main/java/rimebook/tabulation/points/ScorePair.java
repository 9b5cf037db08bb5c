package rimebook.tabulation.points;

import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.English;
import rimebook.tabulation.TabulationException;

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
	public String words(UnaryOperator<String> names) {
		String first = names.apply(this.ahead.entry());
		String second = names.apply(this.behind.entry());
		if (place(this.ahead) == place(this.behind)) {
			return first + " and " + second + " share " + English.ordinal(place(this.ahead)) + ": " + figures() + ".";
		}
		return first + " (" + English.ordinal(place(this.ahead)) + ") is ahead of " + second + " ("
				+ English.ordinal(place(this.behind)) + "): " + figures() + decision() + ".";
	}

	private String figures() {
		PerformanceScore own = score(this.ahead);
		PerformanceScore theirs = score(this.behind);
		String deducted = own.deducted().equals(theirs.deducted()) ? ""
				: "; " + own.deducted() + " against " + theirs.deducted() + " deducted";
		return against(own.total(), theirs.total(), " points") + "; "
				+ against(own.elementPoints(), theirs.elementPoints(), " for the elements") + "; "
				+ against(own.componentPoints(), theirs.componentPoints(), " for the components") + deducted;
	}

	private static PerformanceScore score(PointsStanding.ScoredEntry row) {
		return Objects.requireNonNull(row.score());
	}

	private static String against(Points own, Points theirs, String what) {
		int compared = own.compareTo(theirs);
		if (compared == 0) {
			return "both " + own + what;
		}
		return own + " against " + theirs + what + ", "
				+ ((compared > 0) ? own.minus(theirs) + " more" : theirs.minus(own) + " less");
	}

	private String decision() {
		boolean tied = score(this.ahead).total().equals(score(this.behind).total());
		String part = this.tieBreak.criterion().filter(Criterion.ELEMENT_POINTS::equals).isPresent() ? "elements"
				: "components";
		return tied ? "; with equal totals the " + part + " decide" : "";
	}

	/**
	 * Put the elements and components beside each other.
	 * @return one line for each, for example "1. I4+pi3 8.54 | I4+pi2 7.90"
	 */
	public List<String> lines() {
		return new PairLines(score(this.ahead), score(this.behind)).lines();
	}

}
