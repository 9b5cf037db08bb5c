package rimebook.results;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;

/**
 * Where a segment's result stands.
 *
 * @param onIce the team on the ice, or {@code null}
 * @param interrupted whether that team was broken off
 * @param postedAt when it was posted last, UTC; protests against what changed then are
 * timed from it, see {@link Posting}
 * @param refereeSignature name of the referee who signed, else empty
 * @param accountantSignature name of the accountant who signed, else empty
 * @param version to be given back with every act on it
 */
public record SegmentResultView(SegmentId segment, SegmentResultState state, @Nullable EntryId onIce,
		boolean interrupted, @Nullable Instant postedAt, String postedBy, String refereeSignature,
		@Nullable Instant refereeSignedAt, String accountantSignature, @Nullable Instant accountantSignedAt,
		int version) {
}
