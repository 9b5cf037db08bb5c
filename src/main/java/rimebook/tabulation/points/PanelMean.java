package rimebook.tabulation.points;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.jspecify.annotations.Nullable;

/**
 * The trimmed mean of a panel's marks: from a certain number of marks on, one highest and
 * one lowest are left out (of equal marks only one copy), the others are averaged and the
 * mean rounded to two decimals, halves away from zero (ISU rule 353 as in Skate Canada,
 * Official Regulations, section 105, 1.4 to 1.6: from five marks on).
 *
 * @param marks one for each seat of the panel, in its order
 * @param sum of the marks that count
 * @param divisor how many count
 * @param mean rounded
 */
public record PanelMean(List<PanelMark> marks, Points sum, int divisor, Points mean) {

	private static final int SHOWN_DECIMALS = 6;

	public PanelMean {
		marks = List.copyOf(marks);
	}

	/**
	 * Average.
	 * @param marks of each judge, at least one of them present
	 * @param trimFrom number of marks, at least 3, from which two are left out
	 */
	static PanelMean of(List<@Nullable Points> marks, int trimFrom) {
		List<Points> present = marks.stream().filter(Objects::nonNull).sorted().toList();
		boolean trimmed = present.size() >= trimFrom;
		int highest = trimmed ? marks.indexOf(present.get(present.size() - 1)) : -1;
		int lowest = trimmed ? marks.lastIndexOf(present.get(0)) : -1;
		List<PanelMark> used = IntStream.range(0, marks.size())
			.mapToObj((i) -> new PanelMark(i + 1, marks.get(i), use(marks.get(i), i == highest, i == lowest)))
			.toList();
		return of(used);
	}

	private static MarkUse use(@Nullable Points mark, boolean highest, boolean lowest) {
		if (mark == null) {
			return MarkUse.ABSENT;
		}
		return highest ? MarkUse.DROPPED_HIGHEST : lowest ? MarkUse.DROPPED_LOWEST : MarkUse.COUNTED;
	}

	private static PanelMean of(List<PanelMark> marks) {
		List<Points> counted = points(marks);
		Points sum = Points.sum(counted);
		return new PanelMean(marks, sum, counted.size(), sum.dividedBy(counted.size()));
	}

	private static List<Points> points(List<PanelMark> marks) {
		return marks.stream().filter(PanelMark::isCounted).map(PanelMark::points).filter(Objects::nonNull).toList();
	}

	/**
	 * Return the numbers of the judges whose marks count here.
	 * @return from 1, ascending
	 */
	public List<Integer> countedJudges() {
		return this.marks.stream().filter(PanelMark::isCounted).map(PanelMark::judge).toList();
	}

	/**
	 * Return the marks that were left out.
	 * @return none, or the highest and the lowest in the panel's order
	 */
	public List<PanelMark> dropped() {
		return this.marks.stream()
			.filter((mark) -> mark.use() == MarkUse.DROPPED_HIGHEST || mark.use() == MarkUse.DROPPED_LOWEST)
			.toList();
	}

	/**
	 * Write the mean before it was rounded.
	 * @return {@code 0.814}, or six decimals and "…" where there are more
	 */
	public String quotient() {
		BigDecimal exact = this.sum.toDecimal();
		BigDecimal divisor = BigDecimal.valueOf(this.divisor);
		BigDecimal shown = exact.divide(divisor, SHOWN_DECIMALS, RoundingMode.DOWN);
		boolean whole = shown.multiply(divisor).compareTo(exact) == 0;
		return whole ? shortened(shown) : shown.toPlainString() + "…";
	}

	private static String shortened(BigDecimal shown) {
		BigDecimal bare = shown.stripTrailingZeros();
		return bare.setScale(Math.max(2, bare.scale())).toPlainString();
	}

	/**
	 * Show how the mean was made.
	 * @return for example "0.68 + 0.68 + 0.68 + 1.35 + 0.68 = 4.07; 4.07 / 5 = 0.814,
	 * rounded 0.81; left out: 0.00 of judge 5 (lowest), 1.35 of judge 3 (highest)"
	 */
	public String working() {
		String terms = Points.terms(points(this.marks));
		String added = (this.divisor == 1) ? terms : terms + " = " + this.sum;
		return added + "; " + this.sum + " / " + this.divisor + " = " + quotient() + ", rounded " + this.mean
				+ leftOut();
	}

	private String leftOut() {
		return dropped().isEmpty() ? ""
				: "; left out: " + dropped().stream()
					.map((mark) -> mark.points() + " of judge " + mark.judge()
							+ ((mark.use() == MarkUse.DROPPED_HIGHEST) ? " (highest)" : " (lowest)"))
					.collect(Collectors.joining(", "));
	}

	/** What became of one judge's mark in one line of the sheet. */
	public enum MarkUse {

		/** Part of the mean. */
		COUNTED,

		/** Left out: one highest mark of the line. */
		DROPPED_HIGHEST,

		/** Left out: one lowest mark of the line. */
		DROPPED_LOWEST,

		/** The judge gave none. */
		ABSENT

	}

	/**
	 * One judge's mark in one line of the sheet.
	 *
	 * @param judge number of the judge, from 1
	 * @param points the mark, or for a grade what the table makes of it; none where
	 * absent
	 * @param use whether it counts
	 */
	public record PanelMark(int judge, @Nullable Points points, PanelMean.MarkUse use) {

		boolean isCounted() {
			return this.use == PanelMean.MarkUse.COUNTED;
		}

	}

}
