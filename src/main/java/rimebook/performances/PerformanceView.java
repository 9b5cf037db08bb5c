package rimebook.performances;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A performance as others see it.
 *
 * @param start who starts, as it was drawn
 * @param course how far it has come
 * @param turn when it is its turn
 * @param version to be given back with every act on it
 */
public record PerformanceView(PerformanceId id, SegmentId segment, Start start, Course course, Turn turn, int version) {

	/** Tell whether its team skates now, or is about to. */
	public boolean isOnIce() {
		return this.course.status() == PerformanceStatus.ON_ICE;
	}

	/** Tell whether its cards were opened again and are not closed yet. */
	public boolean isReopened() {
		return this.course.status() == PerformanceStatus.REOPENED;
	}

	/** Tell whether its cards are closed and count. */
	public boolean isClosed() {
		return this.course.status() == PerformanceStatus.CLOSED;
	}

	/** Tell whether judges may send and change their cards. */
	public boolean takesCards() {
		return this.course.status().takesCards();
	}

	/** Tell whether cards were closed, even if the team was disqualified afterwards. */
	public boolean hasClosedCards() {
		return this.course.closedAt() != null;
	}

	/** Tell whether the whole programme is skated again. */
	public boolean isAgain() {
		return this.course.skate() > 1;
	}

	/** Whose performance it is. */
	public EntryId entry() {
		return this.start.entry();
	}

	/** The number drawn; it never shifts. */
	public int startNumber() {
		return this.start.startNumber();
	}

	/** How far it has come, in a word. */
	public PerformanceStatus status() {
		return this.course.status();
	}

	/**
	 * Who starts, as it was drawn.
	 *
	 * @param startNumber the number drawn; after the first call of its segment it never
	 * shifts
	 * @param group the warm-up group, from 1
	 */
	public record Start(EntryId entry, int startNumber, int group) {
	}

	/**
	 * When it is a team's turn.
	 *
	 * @param calledAt when it was called on the ice, UTC
	 * @param callReason why it was called out of the drawn order, else empty
	 * @param postponed whether it waits for its turn after others, by the referee's word
	 */
	public record Turn(@Nullable Instant calledAt, String callReason, boolean postponed) {
	}

	/**
	 * How far a performance has come.
	 *
	 * @param statusReason why it was withdrawn, not finished, disqualified, opened again
	 * or set aside, or why it waits for others; else empty
	 * @param skate 1, and one more for each time that the whole programme is skated again
	 * @param closedAt when its cards were closed, UTC
	 */
	public record Course(PerformanceStatus status, String statusReason, int skate, @Nullable Instant closedAt) {
	}

}
