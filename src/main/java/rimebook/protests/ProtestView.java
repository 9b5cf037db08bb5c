package rimebook.protests;

import java.time.Instant;
import java.util.EnumSet;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A protest.
 *
 * @param filedBy who protests, as named on the protest
 * @param receivedBy the official who took it
 * @param filedAt when it was handed in, UTC
 * @param writtenAt when it was written down, UTC; {@code null} for the oldest ones
 * @param posting the posted version that it is against, 0 before the first posting
 * @param confirmedBy who confirmed that it was handed in before the time was over; empty
 * where nobody had to
 * @param grounds why it was refused, denied or upheld; empty while undecided
 */
public record ProtestView(ProtestId id, SegmentId segment, EntryId entry, ProtestCategory category, String text,
		String filedBy, String receivedBy, Instant filedAt, @Nullable Instant writtenAt, int posting,
		String confirmedBy, State state, String grounds, String decidedBy, @Nullable Instant decidedAt, int version) {

	/** Where a protest stands. */
	public enum State {

		/**
		 * Written down after the time was over, as handed in before: a second official
		 * confirms that, or it is not heard.
		 */
		UNCONFIRMED,

		/** Received in time and waiting for the referee's decision. */
		FILED,

		/**
		 * Not heard: out of time or about an evaluation; the rule is named as grounds.
		 */
		REFUSED,

		/** Heard and denied by the referee. */
		DENIED,

		/** Heard and upheld by the referee; what follows is a correction of its own. */
		UPHELD;

		/** The states in which somebody still has to decide something. */
		static Set<State> open() {
			return EnumSet.of(UNCONFIRMED, FILED);
		}

	}

}
