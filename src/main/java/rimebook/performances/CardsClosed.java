package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * The referee closed the cards of a performance: a new standing is due.
 *
 * @param words what the new standing says about itself; empty where nothing is unusual
 */
public record CardsClosed(PerformanceId performance, SegmentId segment, String words,
		AuditedChange change) implements AuditedEvent {
}
