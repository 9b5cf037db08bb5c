package rimebook.fees;

import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

import rimebook.competition.Cancellations;
import rimebook.competition.Competitions;
import rimebook.entries.EntryEvent;

/**
 * Settles what is owed when a team comes or goes and when an event is cancelled or
 * brought back, in the transaction of that act, which holds the competition. How many
 * skate it does not hear of.
 */
@Component
class EntryFees {

	private final Settlement settlement;

	private final Competitions competitions;

	EntryFees(Settlement settlement, Competitions competitions) {
		this.settlement = settlement;
		this.competitions = competitions;
	}

	@EventListener
	void on(EntryEvent event) {
		this.settlement.settle(this.competitions.event(event.event()).competition(), event.change().actor());
	}

	@EventListener
	void on(Cancellations.Changed changed) {
		if (changed.segment() == null) {
			this.settlement.settle(changed.event().competition(), changed.change().actor());
		}
	}

}
