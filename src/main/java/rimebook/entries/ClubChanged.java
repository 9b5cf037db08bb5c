package rimebook.entries;

import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** The name or the town of a club was mended. */
public record ClubChanged(ClubView before, ClubView after, AuditedChange change) implements AuditedEvent {

}
