package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * A performance ended without marks that count: withdrawn, not finished, disqualified.
 */
public record PerformanceEnded(PerformanceId performance, SegmentId segment, PerformanceStatus status,
		AuditedChange change) implements AuditedEvent {
}
