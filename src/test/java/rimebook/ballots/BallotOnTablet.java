package rimebook.ballots;

import rimebook.competition.EventView;
import rimebook.tablets.TabletCard;

/**
 * The card of this way of judging, for events of one name, so that what tablets say
 * without one can be seen, too.
 */
class BallotOnTablet implements TabletCard {

	static final String EVENT = "Ballot by tablet";

	@Override
	public boolean isFor(EventView event) {
		return event.judging().method().equals(Ballots.METHOD) && event.name().equals(EVENT);
	}

	@Override
	public String page() {
		return "ballots/card";
	}

}
