package rimebook.marks;

import rimebook.competition.SegmentId;

import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** Two officials corrected a closed card: a new standing is due. */
public record CardCorrected(PerformanceId performance, SegmentId segment,
		AuditedChange change) implements AuditedEvent {
}
