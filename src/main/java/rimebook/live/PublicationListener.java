package rimebook.live;

import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

import rimebook.competition.Cancellations;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.EntryEvent;
import rimebook.entries.Renaming;
import rimebook.results.IceChanged;
import rimebook.results.ResultVersion;
import rimebook.timetable.TimetableVersions;

/** Hears what became public, once it is committed. */
@Component
class PublicationListener {

	private final Pulse pulse;

	PublicationListener(Pulse pulse) {
		this.pulse = pulse;
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(ResultVersion.VersionPublished published) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(IceChanged changed) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(Cancellations.Changed changed) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(StartingOrderDraw.Drawn drawn) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(EntryEvent.Withdrawn withdrawn) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(EntryEvent.Reinstated back) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(Renaming.ClubChanged changed) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(Renaming.TeamChanged changed) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(TimetableVersions.Published published) {
		this.pulse.quicken();
	}

}
