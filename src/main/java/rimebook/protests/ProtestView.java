package rimebook.protests;

import java.time.Instant;

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
		String confirmedBy, ProtestState state, String grounds, String decidedBy, @Nullable Instant decidedAt,
		int version) {
}
