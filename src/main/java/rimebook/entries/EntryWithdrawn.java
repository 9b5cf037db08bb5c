package rimebook.entries;

import rimebook.competition.EventId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** A team withdrew from an event. */
public record EntryWithdrawn(EntryId entry, EventId event, AuditedChange change) implements AuditedEvent {

}
