package rimebook.entries;

import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** The name of a team, or how it is said, was mended. */
public record TeamChanged(TeamView before, TeamView after, AuditedChange change) implements AuditedEvent {

}
