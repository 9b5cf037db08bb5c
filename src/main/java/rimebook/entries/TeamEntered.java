package rimebook.entries;

import rimebook.competition.EventId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** A team was entered into an event, or came back after it had withdrawn. */
public record TeamEntered(EntryId entry, EventId event, AuditedChange change) implements AuditedEvent {

}
