package rimebook.tabulation.points;

import rimebook.tabulation.TabulationException;

/**
 * What a team brings from one segment into the result of the event.
 *
 * @param place in the segment, from 1
 * @param total of the segment
 */
public record SegmentTotal(int place, Points total) {

	private static final int HIGHEST_PLACE = 9999;

	private static final int MOST = 100_000_000;

	/**
	 * Check the figures.
	 * @throws TabulationException {@code place-out-of-range} or
	 * {@code total-out-of-range}: beyond a million points
	 */
	public SegmentTotal {
		if (place < 1 || place > HIGHEST_PLACE) {
			throw Refusal.placeOutOfRange(place, HIGHEST_PLACE);
		}
		if (!total.isBetween(-MOST, MOST)) {
			throw Refusal.totalOutOfRange(total);
		}
	}

}
