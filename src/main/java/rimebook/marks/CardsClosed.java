package rimebook.marks;

import rimebook.competition.SegmentId;

import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** The referee closed the cards of a performance: a new standing is due. */
public record CardsClosed(PerformanceId performance, SegmentId segment, AuditedChange change) implements AuditedEvent {
}
