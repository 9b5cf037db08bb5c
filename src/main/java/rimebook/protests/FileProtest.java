package rimebook.protests;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A protest as handed in.
 *
 * @param entry the team that protests
 * @param filedBy the person who protests for it
 * @param handedInAt when, UTC; {@code null} for now
 * @param posting the version that was posted and that it is against, 0 for the one posted
 * last
 */
public record FileProtest(SegmentId segment, EntryId entry, ProtestCategory category, String text, String filedBy,
		@Nullable Instant handedInAt, int posting) {

	/** One against what was posted last. */
	public FileProtest(SegmentId segment, EntryId entry, ProtestCategory category, String text, String filedBy,
			@Nullable Instant handedInAt) {
		this(segment, entry, category, text, filedBy, handedInAt, 0);
	}
}
