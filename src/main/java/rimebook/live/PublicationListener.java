package rimebook.live;

import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

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

	private final Renditions renditions;

	PublicationListener(Pulse pulse, Renditions renditions) {
		this.pulse = pulse;
		this.renditions = renditions;
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
	void on(StartingOrderDrawn drawn) {
		this.renditions.clear();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(EntryWithdrawn withdrawn) {
		this.renditions.clear();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(EntryReinstated back) {
		this.renditions.clear();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(ClubChanged changed) {
		this.renditions.clear();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(TeamChanged changed) {
		this.renditions.clear();
	}

}
