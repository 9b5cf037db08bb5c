package rimebook.marks;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * A performance as others see it.
 *
 * @param startNumber the number drawn; it never shifts
 * @param group the warm-up group, from 1
 * @param statusReason why it was withdrawn, not finished, disqualified or opened again;
 * else empty
 * @param calledAt when it was called on the ice, UTC
 * @param closedAt when its cards were closed, UTC
 * @param version to be given back with every act on it
 */
public record PerformanceView(PerformanceId id, SegmentId segment, EntryId entry, int startNumber, int group,
		PerformanceStatus status, String statusReason, @Nullable Instant calledAt, @Nullable Instant closedAt,
		int version) {
}
