package rimebook.performances;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A performance as others see it.
 *
 * @param startNumber the number drawn; it never shifts
 * @param group the warm-up group, from 1
 * @param statusReason why it was withdrawn, not finished, disqualified, opened again or
 * set aside, or why it waits for others; else empty
 * @param calledAt when it was called on the ice, UTC
 * @param closedAt when its cards were closed, UTC
 * @param version to be given back with every act on it
 * @param skate 1, and one more for each time that the whole programme is skated again
 * @param postponed whether it waits for its turn after others, by the referee's word
 * @param callReason why it was called out of the drawn order, else empty
 */
public record PerformanceView(PerformanceId id, SegmentId segment, EntryId entry, int startNumber, int group,
		PerformanceStatus status, String statusReason, @Nullable Instant calledAt, @Nullable Instant closedAt,
		int version, int skate, boolean postponed, String callReason) {

	/** Tell whether its team skates now, or is about to. */
	public boolean isOnIce() {
		return this.status == PerformanceStatus.ON_ICE;
	}

	/** Tell whether its cards were opened again and are not closed yet. */
	public boolean isReopened() {
		return this.status == PerformanceStatus.REOPENED;
	}

	/** Tell whether its cards are closed and count. */
	public boolean isClosed() {
		return this.status == PerformanceStatus.CLOSED;
	}

	/** Tell whether judges may send and change their cards. */
	public boolean takesCards() {
		return this.status.takesCards();
	}

	/** Tell whether cards were closed, even if the team was disqualified afterwards. */
	public boolean hasClosedCards() {
		return this.closedAt != null;
	}

	/** Tell whether the whole programme is skated again. */
	public boolean isAgain() {
		return this.skate > 1;
	}

}
