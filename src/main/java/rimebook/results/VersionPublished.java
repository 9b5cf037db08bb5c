package rimebook.results;

import java.util.UUID;

import rimebook.shared.AuditedChange;
import rimebook.shared.AuditedEvent;

/** A new version of a standing stands; published in the transaction that wrote it. */
public record VersionPublished(Scope scope, UUID scopeId, int number, AuditedChange change) implements AuditedEvent {
}
