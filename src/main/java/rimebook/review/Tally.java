package rimebook.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.apache.commons.math3.fraction.BigFraction;
import org.apache.commons.math3.stat.correlation.KendallsCorrelation;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.jspecify.annotations.Nullable;

/**
 * How far one judge agrees with the other judges of a panel in one aspect.
 * <p>
 * A judge and the others each have an order of the teams: by the mean of what was given
 * to a team, that of the others being the mean of their averages. Where the judge gave
 * nothing for a thing, it is left out on both sides. Over several segments pairs and
 * distances are added up, Kendall's figure is made of all the pairs, and Spearman's is
 * the mean of those that there are.
 *
 * @param distance of the marks
 * @param pairs of teams, each of one segment
 * @param kendall tau-b, {@code null} where there is none
 * @param spearman rho, the mean of several segments; {@code null} where there is none
 * @param segments of how many segments Spearman's figure is the mean
 * @param lack why there is no figure; {@code null} where there is one
 * @param outlying how many marks are pointed out
 */
record Tally(Distance distance, Pairs pairs, @Nullable Double kendall, @Nullable Double spearman, int segments,
		@Nullable Lack lack, int outlying) {

	/**
	 * Compare the marks of one judge in one segment.
	 * @param lines everything that was judged
	 * @param judge which one in panel order, from 0
	 * @param limit from which a mark is pointed out, in hundredths
	 */
	static Tally of(List<MarkLine> lines, int judge, int limit) {
		List<Compared> compared = lines.stream().flatMap((line) -> line.of(judge).stream()).toList();
		int outlying = (int) compared.stream().filter((one) -> one.isOutlying(limit)).count();
		Map<String, Sum> teams = new LinkedHashMap<>();
		compared.forEach((one) -> teams.merge(one.line().team().entry(), Sum.of(one), Sum::plus));
		List<BigFraction> own = teams.values().stream().map(Sum::meanGiven).toList();
		List<BigFraction> others = teams.values().stream().map(Sum::meanAverage).toList();
		Distance distance = Distance.of(compared);
		Pairs pairs = Pairs.of(own, others);
		Lack lack = lack(lines, judge, pairs);
		if (lack != null) {
			return new Tally(distance, pairs, null, null, 0, lack, outlying);
		}
		double[] x = figures(own);
		double[] y = figures(others);
		return new Tally(distance, pairs, new KendallsCorrelation().correlation(x, y),
				new SpearmansCorrelation().correlation(x, y), 1, null, outlying);
	}

	private static @Nullable Lack lack(List<MarkLine> lines, int judge, Pairs pairs) {
		if (lines.stream().allMatch((line) -> line.given().get(judge) == null)) {
			return Lack.NO_MARKS;
		}
		if (lines.stream().allMatch((line) -> line.of(judge).isEmpty())) {
			return Lack.NO_OTHERS;
		}
		if (pairs.all() == 0) {
			return Lack.ONE_TEAM;
		}
		if (pairs.judgeLevel() + pairs.bothLevel() == pairs.all()) {
			return Lack.JUDGE_LEVEL;
		}
		return (pairs.othersLevel() + pairs.bothLevel() == pairs.all()) ? Lack.OTHERS_LEVEL : null;
	}

	/** Equal fractions become equal figures, so that ties stay ties. */
	private static double[] figures(List<BigFraction> fractions) {
		return fractions.stream().mapToDouble(BigFraction::doubleValue).toArray();
	}

	/** This judge in two segments. */
	Tally plus(Tally more) {
		Pairs both = this.pairs.plus(more.pairs);
		Lack stays = (this.lack != null && more.lack != null) ? this.lack : null;
		int count = this.segments + more.segments;
		Double mean = (count > 0) ? (sumOfSpearman() + more.sumOfSpearman()) / count : null;
		return new Tally(this.distance.plus(more.distance), both, (stays == null) ? both.tau() : null, mean, count,
				stays, this.outlying + more.outlying);
	}

	private double sumOfSpearman() {
		return (this.spearman != null) ? this.spearman * this.segments : 0;
	}

	/**
	 * What one team was given, added up.
	 *
	 * @param things how many
	 */
	private record Sum(int things, BigFraction given, BigFraction average) {

		static Sum of(Compared compared) {
			return new Sum(1, new BigFraction(compared.given()), compared.average());
		}

		Sum plus(Sum more) {
			return new Sum(this.things + more.things, this.given.add(more.given), this.average.add(more.average));
		}

		BigFraction meanGiven() {
			return this.given.divide(this.things);
		}

		BigFraction meanAverage() {
			return this.average.divide(this.things);
		}

	}

}
