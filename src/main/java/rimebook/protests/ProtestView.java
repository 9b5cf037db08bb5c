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
 * @param grounds why it was refused, denied or upheld; empty while undecided
 */
public record ProtestView(ProtestId id, SegmentId segment, EntryId entry, ProtestCategory category, String text,
		String filedBy, String receivedBy, Instant filedAt, ProtestState state, String grounds, String decidedBy,
		@Nullable Instant decidedAt, int version) {
}
