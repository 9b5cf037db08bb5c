package rimebook.shared;

/**
 * A fact that belongs on the record. Publish it inside the transaction of the change: the
 * record hears it there, so that both are kept or neither is. Publishing one outside a
 * transaction is refused.
 */
public interface AuditedEvent {

	/** What the record writes down. */
	AuditedChange change();

}
