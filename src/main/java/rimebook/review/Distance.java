package rimebook.review;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import org.apache.commons.math3.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * How far a judge's marks are from the averages of the other judges, added up exactly.
 *
 * @param marks how many were compared
 * @param away how far they are from the averages, whichever way
 * @param above how far they are above them, less how far below
 */
record Distance(int marks, BigFraction away, BigFraction above) {

	static final Distance NONE = new Distance(0, BigFraction.ZERO, BigFraction.ZERO);

	static Distance of(List<Compared> compared) {
		return compared.stream()
			.map(Compared::difference)
			.map((difference) -> new Distance(1, difference.abs(), difference))
			.reduce(NONE, Distance::plus);
	}

	Distance plus(Distance more) {
		return new Distance(this.marks + more.marks, this.away.add(more.away), this.above.add(more.above));
	}

	/** On average, in hundredths; {@code null} where nothing was compared. */
	@Nullable Integer meanAway() {
		return mean(this.away);
	}

	/** On average, in hundredths; {@code null} where nothing was compared. */
	@Nullable Integer meanAbove() {
		return mean(this.above);
	}

	private @Nullable Integer mean(BigFraction sum) {
		return (this.marks == 0) ? null : rounded(sum.divide(this.marks), 0).intValueExact();
	}

	/** Rounded to so many decimals, halves away from zero. */
	static BigDecimal rounded(BigFraction fraction, int decimals) {
		return new BigDecimal(fraction.getNumerator()).divide(new BigDecimal(fraction.getDenominator()), decimals,
				RoundingMode.HALF_UP);
	}

}
