package rimebook.tabulation.points;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.Reason;

/** The words of a segment under points judging. */
record ScoreWords(PerformanceScore score) implements Reason.ReasonWords {

	@Override
	public String own(Reason reason) {
		String less = this.score.deductions().isEmpty() ? "" : ", less " + this.score.deducted() + " deducted";
		return this.score.total() + " points (" + this.score.elementPoints() + " for the elements, "
				+ this.score.componentPoints() + " for the components" + less + ")";
	}

	@Override
	public String rivals(Reason.Comparison comparison) {
		return (comparison.criterion() == Criterion.TOTAL_POINTS) ? difference(comparison) : sameTotal(comparison)
				+ ((comparison.criterion() == Criterion.ELEMENT_POINTS) ? " for the elements" : " for the components");
	}

	/** "who had 66.01, 0.88 more". */
	static String difference(Reason.Comparison comparison) {
		Points theirs = new Points(comparison.theirs());
		Points own = new Points(comparison.own());
		return "who had " + theirs + ", "
				+ ((theirs.compareTo(own) > 0) ? theirs.minus(own) + " more" : own.minus(theirs) + " less");
	}

	/** "who had the same total but 34.90". */
	static String sameTotal(Reason.Comparison comparison) {
		return "who had the same total but " + new Points(comparison.theirs());
	}

}
