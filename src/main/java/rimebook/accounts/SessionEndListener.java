package rimebook.accounts;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * Ends the sessions of a person whose rights have changed, on every node, so that nobody
 * goes on with rights they no longer have.
 */
@Component
class SessionEndListener {

	private final ObjectProvider<FindByIndexNameSessionRepository<? extends Session>> sessions;

	SessionEndListener(ObjectProvider<FindByIndexNameSessionRepository<? extends Session>> sessions) {
		this.sessions = sessions;
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(PersonChanged changed) {
		this.sessions.ifAvailable((kept) -> end(kept, changed.signInName()));
	}

	private static void end(FindByIndexNameSessionRepository<? extends Session> kept, String signInName) {
		kept.findByPrincipalName(signInName).keySet().forEach(kept::deleteById);
	}

}
