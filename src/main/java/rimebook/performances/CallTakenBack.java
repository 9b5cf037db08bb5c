package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** A call was a slip and was taken back before any card was sent. */
public record CallTakenBack(PerformanceId performance, SegmentId segment,
		AuditedChange change) implements AuditedEvent {
}
