package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** A judge's card was received; it may still change until the cards are closed. */
public record CardReceived(PerformanceId performance, SegmentId segment, AuditedChange change) implements AuditedEvent {
}
