package rimebook.audit;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;
import org.springframework.transaction.support.TransactionSynchronizationManager;

import rimebook.shared.AuditedEvent;

/**
 * Hears every audited event and writes its line at the end of the same transaction: both
 * the change and the line are kept, or neither.
 */
@Component
class RecordListener {

	private final RecordAppender lines;

	RecordListener(RecordAppender lines) {
		this.lines = lines;
	}

	/** A change that could be kept without its line is a bug of whoever publishes it. */
	@EventListener
	void refuseOutsideTransaction(AuditedEvent event) {
		if (!TransactionSynchronizationManager.isActualTransactionActive()
				|| TransactionSynchronizationManager.isCurrentTransactionReadOnly()) {
			throw new IllegalStateException("'" + event.change().action()
					+ "' was published outside a transaction that writes; nothing can be put on the record");
		}
	}

	@TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
	void on(AuditedEvent event) {
		this.lines.append(event.change());
	}

}
