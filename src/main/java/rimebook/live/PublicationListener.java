package rimebook.live;

import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

import rimebook.competition.CancellationChanged;
import rimebook.draw.StartingOrderDrawn;
import rimebook.entries.ClubChanged;
import rimebook.entries.EntryReinstated;
import rimebook.entries.EntryWithdrawn;
import rimebook.entries.TeamChanged;
import rimebook.results.IceChanged;
import rimebook.results.VersionPublished;

/** Hears what became public, once it is committed. */
@Component
class PublicationListener {

	private final Pulse pulse;

	PublicationListener(Pulse pulse) {
		this.pulse = pulse;
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(VersionPublished published) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(IceChanged changed) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(CancellationChanged changed) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(StartingOrderDrawn drawn) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(EntryWithdrawn withdrawn) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(EntryReinstated back) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(ClubChanged changed) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(TeamChanged changed) {
		this.pulse.quicken();
	}

}
