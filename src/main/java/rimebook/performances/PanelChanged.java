package rimebook.performances;

import rimebook.competition.SegmentId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * Other cards count in a segment than before: a new standing is due where there is one.
 *
 * @param words what changed, for the new standing's note
 */
public record PanelChanged(SegmentId segment, String words, AuditedChange change) implements AuditedEvent {
}
