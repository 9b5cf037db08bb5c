package rimebook.tabulation;

/**
 * A figure by which one team is placed before another. The unit of its values is given
 * with each constant.
 */
public enum Criterion {

	/**
	 * Majority: lowest place for which a majority of judges stands, hundredths; lower is
	 * better.
	 */
	MAJORITY_PLACE(false),

	/** Majority: number of judges at that place or better; higher is better. */
	SIZE_OF_MAJORITY(true),

	/** Majority: sum of the ordinals in the majority, hundredths; lower is better. */
	TOTAL_OF_MAJORITY(false),

	/** Majority: sum of all ordinals, hundredths; lower is better. */
	TOTAL_ORDINALS(false),

	/** One-by-one: comparisons won, hundredths; higher is better. */
	WINS(true),

	/** One-by-one: judges in favour over all comparisons; higher is better. */
	JUDGES_IN_FAVOUR(true),

	/** Combination: 1 for a place in every segment, else 0; higher is better. */
	EVERY_SEGMENT(true),

	/** Combination: sum of the factored places, hundredths; lower is better. */
	FACTORED_TOTAL(false),

	/** Combination: place in the last segment; lower is better. */
	LAST_SEGMENT_PLACE(false),

	/**
	 * Combination, segment missing: number (from 1) of the last segment with a place, 0
	 * for none; higher is better.
	 */
	SEGMENT_REACHED(true),

	/** Combination, segment missing: place in the segment reached; lower is better. */
	PLACE_IN_SEGMENT_REACHED(false),

	/**
	 * Combination, segment missing: number of segments with a place; higher is better.
	 */
	SEGMENTS_SKATED(true),

	/**
	 * Combination, segment missing: factored places so far, hundredths; lower is better.
	 */
	TOTAL_SO_FAR(false),

	/** Points: total of the segment or of the event, hundredths; higher is better. */
	TOTAL_POINTS(true),

	/** Points: total of the elements, hundredths; higher is better. */
	ELEMENT_POINTS(true),

	/** Points: total of the factored components, hundredths; higher is better. */
	COMPONENT_POINTS(true),

	/** Points: total of the last segment, hundredths; higher is better. */
	LAST_SEGMENT_POINTS(true);

	private final boolean higherIsBetter;

	Criterion(boolean higherIsBetter) {
		this.higherIsBetter = higherIsBetter;
	}

	/**
	 * Return whether the greater value is placed first.
	 * @return {@code false} where the smaller one is
	 */
	public boolean higherIsBetter() {
		return this.higherIsBetter;
	}

}
