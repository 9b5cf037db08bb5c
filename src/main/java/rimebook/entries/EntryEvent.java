package rimebook.entries;

import rimebook.competition.EventId;
import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/**
 * Something that happened to an entry, published within the transaction of the act; each
 * is a line on the record too.
 */
public sealed interface EntryEvent extends AuditedEvent {

	/** Which entry. */
	EntryId entry();

	/** Into which event. */
	EventId event();

	/** A team was entered into an event, or came back after it had withdrawn. */
	record Entered(EntryId entry, EventId event, AuditedChange change) implements EntryEvent {

	}

	/**
	 * A team that was in no draw went over into another event.
	 *
	 * @param event where it is now
	 * @param from where it was
	 */
	record Moved(EntryId entry, EventId event, EventId from, AuditedChange change) implements EntryEvent {
	}

	/** A team withdrew from an event. */
	record Withdrawn(EntryId entry, EventId event, AuditedChange change) implements EntryEvent {

	}

	/** The withdrawal of a team was taken back: it takes part as before. */
	record Reinstated(EntryId entry, EventId event, AuditedChange change) implements EntryEvent {

	}

}
