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
 */
public record FileProtest(SegmentId segment, EntryId entry, ProtestCategory category, String text, String filedBy,
		@Nullable Instant handedInAt) {
}
