package rimebook.draw;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * A starting order was drawn, for the first time or again.
 *
 * @param number the number of the order that is in force now
 */
public record StartingOrderDrawn(SegmentId segment, int number, AuditedChange change) implements AuditedEvent {

}
