package rimebook.tabulation.points;

import rimebook.tabulation.EventPair;
import rimebook.tabulation.TabulationException;

/** Two teams of an event under points judging beside each other. */
public final class TotalPair {

	private TotalPair() {
	}

	/**
	 * Put two teams beside each other.
	 * @param standing of the event
	 * @param one identifier
	 * @param other another identifier
	 * @return the pair
	 * @throws TabulationException {@code entry-unknown}, or {@code nothing-to-compare}
	 * where one has no place or both are the same
	 */
	public static EventPair of(PointsEventStanding standing, String one, String other) {
		return EventPair.of(side(standing, one), side(standing, other));
	}

	private static EventPair.Side side(PointsEventStanding standing, String entry) {
		PointsEventStanding.PointsEventRow row = standing.row(entry)
			.orElseThrow(() -> TabulationException.unknownEntry(entry));
		return new EventPair.Side(entry, EventPair.placed(entry, row.place()),
				new EntryTotals(entry, row.status(), row.segments()).measures());
	}

}
