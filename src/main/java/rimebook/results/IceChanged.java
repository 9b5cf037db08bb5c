package rimebook.results;

import rimebook.competition.SegmentId;

/**
 * Another team is on the ice of a segment, or nobody, or it was broken off; public at
 * once.
 */
public record IceChanged(SegmentId segment) {
}
