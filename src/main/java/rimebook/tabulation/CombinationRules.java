package rimebook.tabulation;

import java.util.Arrays;
import java.util.List;

/**
 * How the segments of an event make its result.
 *
 * @param factors of each segment in the order skated, hundredths ({@code 50 = 0.5})
 * @param incompleteOrder order of teams without a place in every segment
 * @param disqualifiedPlaces what becomes of the place of a disqualified team
 */
public record CombinationRules(List<Integer> factors, IncompleteOrder incompleteOrder,
		DisqualifiedPlaces disqualifiedPlaces) {

	/** The most segments an event may have. */
	public static final int MOST_SEGMENTS = 20;

	private static final int HIGHEST_FACTOR = 100 * Hundredths.ONE;

	/**
	 * Check the factors.
	 * @throws TabulationException {@code factors-missing}: none or too many;
	 * {@code factor-out-of-range}: not 0.01 to 100.0
	 */
	public CombinationRules {
		factors = List.copyOf(factors);
		if (factors.isEmpty() || factors.size() > MOST_SEGMENTS) {
			throw TabulationException.factorsMissing(factors.size());
		}
		for (int factor : factors) {
			if (factor < 1 || factor > HIGHEST_FACTOR) {
				throw TabulationException.factorOutOfRange(factor);
			}
		}
	}

	/**
	 * Return rules with these factors and the default of every other setting.
	 * @param factors of each segment in the order skated, hundredths
	 * @return the rules
	 */
	public static CombinationRules ofFactors(List<Integer> factors) {
		return new CombinationRules(factors, IncompleteOrder.LAST_SEGMENT, DisqualifiedPlaces.CLOSE_FINAL_PLACES);
	}

	/**
	 * Return rules with these factors and the default of every other setting.
	 * @param factors of each segment in the order skated, hundredths: {@code 50, 100} for
	 * a short programme and a free skating
	 * @return the rules
	 */
	public static CombinationRules ofFactors(Integer... factors) {
		return ofFactors(Arrays.asList(factors));
	}

	/**
	 * Return these rules with another order of incomplete teams.
	 * @param other the order
	 * @return a changed copy
	 */
	public CombinationRules withIncompleteOrder(IncompleteOrder other) {
		return new CombinationRules(this.factors, other, this.disqualifiedPlaces);
	}

	/**
	 * Return these rules with another treatment of a disqualified team's place.
	 * @param other the treatment
	 * @return a changed copy
	 */
	public CombinationRules withDisqualifiedPlaces(DisqualifiedPlaces other) {
		return new CombinationRules(this.factors, this.incompleteOrder, other);
	}

	/**
	 * The order of teams without a place in every segment, all of them behind those who
	 * have one. In the examples three segments have the factors 0.2, 0.3 and 0.5 and
	 * nobody shown has a place in the third.
	 */
	public enum IncompleteOrder {

		/**
		 * By the place in the last segment reached: places {@code 26, 24} before
		 * {@code 20, 25} (default; it is how the published results of 1998 list those who
		 * did not reach the final segment).
		 */
		LAST_SEGMENT,

		/**
		 * By the factored places so far, then the last segment reached: {@code 20, 25}
		 * (11.5) before {@code 26, 24} (12.4).
		 */
		TOTAL_SO_FAR

	}

}
