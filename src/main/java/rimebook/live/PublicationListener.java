package rimebook.live;

import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

import rimebook.competition.Cancellations;
import rimebook.draw.StartingOrderDraw;
import rimebook.entries.EntryEvent;
import rimebook.entries.OneClub;
import rimebook.entries.Renaming;
import rimebook.results.IceChanged;
import rimebook.results.ResultVersion;
import rimebook.timetable.TimetableVersions;

/**
 * Hears what became public, once it is committed; other nodes are told with the commit
 * itself.
 */
@Component
class PublicationListener {

	private final Pulse pulse;

	private final Announcer announcer;

	PublicationListener(Pulse pulse, Announcer announcer) {
		this.pulse = pulse;
		this.announcer = announcer;
	}

	/** For each of those below. */
	@TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT,
			classes = { ResultVersion.VersionPublished.class, IceChanged.class, Cancellations.Changed.class,
					StartingOrderDraw.Drawn.class, EntryEvent.Withdrawn.class, EntryEvent.Reinstated.class,
					Renaming.ClubChanged.class, Renaming.TeamChanged.class, OneClub.Separated.class,
					EntryEvent.Moved.class, TimetableVersions.Published.class })
	void announce() {
		this.announcer.announce();
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
	void on(OneClub.Separated separated) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(EntryEvent.Moved moved) {
		this.pulse.quicken();
	}

	@TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
	void on(TimetableVersions.Published published) {
		this.pulse.quicken();
	}

}
