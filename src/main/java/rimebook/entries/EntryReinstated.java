package rimebook.entries;

import rimebook.competition.EventId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** The withdrawal of a team was taken back: it takes part as before. */
public record EntryReinstated(EntryId entry, EventId event, AuditedChange change) implements AuditedEvent {

}
