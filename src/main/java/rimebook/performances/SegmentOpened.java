package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** A segment was opened: its performances stand ready in starting order. */
public record SegmentOpened(SegmentId segment, AuditedChange change) implements AuditedEvent {
}
