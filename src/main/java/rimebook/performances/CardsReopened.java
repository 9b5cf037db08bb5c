package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * The referee opened the closed cards of a performance again. What was published stays;
 * what was signed does not cover it any more.
 */
public record CardsReopened(PerformanceId performance, SegmentId segment,
		AuditedChange change) implements AuditedEvent {
}
