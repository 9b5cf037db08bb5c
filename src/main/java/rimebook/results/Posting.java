package rimebook.results;

import java.time.Instant;

import rimebook.competition.SegmentId;

/**
 * One posting of a segment's result. A posted result that changes is posted anew with its
 * change, and protests against what changed are timed from then.
 *
 * @param number the version of the segment's standing that was posted
 * @param postedAt when, UTC
 * @param changed what had changed since the posting before; empty for the first
 * @param conductUntil until when protests against anything but the computation are heard
 * @param calculationUntil until when protests against the computation are heard
 */
public record Posting(SegmentId segment, int number, Instant postedAt, String postedBy, String changed,
		Instant conductUntil, Instant calculationUntil) {
}
