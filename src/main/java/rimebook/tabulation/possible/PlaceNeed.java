package rimebook.tabulation.possible;

import org.jspecify.annotations.Nullable;

/**
 * What a team still to skate needs in this segment for a place in the event, or a better
 * one.
 *
 * @param entry identifier
 * @param place in the event, from 1
 * @param certain with this finish in the segment, or a better one, the place is certain
 * whatever the others receive; none where no finish makes it so
 * @param certainExact whether no worse finish makes it certain too
 * @param possible with a worse finish than this the place cannot be reached; none where
 * it cannot be reached at all
 * @param possibleExact whether it can really be reached with this finish
 * @param lowest the worst finish that was looked at: where it makes the place certain,
 * the team need not fear for it
 */
public record PlaceNeed(String entry, int place, @Nullable SegmentFinish certain, boolean certainExact,
		@Nullable SegmentFinish possible, boolean possibleExact, SegmentFinish lowest) {

	/**
	 * Return whether the place is certain whatever happens.
	 * @return true where the team need only be marked
	 */
	public boolean isSafe() {
		return this.lowest.equals(this.certain);
	}

	/**
	 * Return whether the place is out of reach.
	 * @return true where no finish leads to it
	 */
	public boolean isLost() {
		return this.possible == null;
	}

	/**
	 * How a team comes out of the segment.
	 *
	 * @param place from 1
	 * @param shared whether it may be shared with other teams
	 */
	public record SegmentFinish(int place, boolean shared) {

	}

}
