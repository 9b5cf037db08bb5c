package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** A team was called on the ice. */
public record PerformanceCalled(PerformanceId performance, SegmentId segment, EntryId entry,
		AuditedChange change) implements AuditedEvent {
}
