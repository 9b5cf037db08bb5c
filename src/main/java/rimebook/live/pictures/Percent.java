package rimebook.live.pictures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Parts of a whole as SVG writes them: {@code 33.33%}. */
final class Percent {

	private static final int DECIMALS = 2;

	private Percent() {
	}

	/**
	 * Write a part.
	 * @param whole positive
	 */
	static String of(long part, long whole) {
		return BigDecimal.valueOf(100 * part)
			.divide(BigDecimal.valueOf(whole), DECIMALS, RoundingMode.HALF_UP)
			.stripTrailingZeros()
			.toPlainString() + "%";
	}

}
