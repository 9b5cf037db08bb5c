package rimebook.tabulation.possible;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * Keeps what was really reached: whenever it is shown positions of the block, it works
 * out the places they make, in the segment and in the event.
 */
final class Reached {

	private final Teams teams;

	private final RankKeys keys;

	private final @Nullable EventKeys events;

	private final List<int[]> orders;

	private final PlaceOrder inSegment;

	private final PlaceOrder inEvent;

	private final Extremes segment;

	private final Extremes event;

	/** By team still to skate, then by {@link Finish}. */
	private final Extremes[] eventByFinish;

	Reached(Teams teams, RankKeys keys, @Nullable EventKeys events) {
		this.teams = teams;
		this.keys = keys;
		this.events = events;
		this.orders = BlockOrders.of(teams, events);
		this.inSegment = new PlaceOrder(teams.size());
		this.inEvent = new PlaceOrder(teams.size());
		this.segment = new Extremes(teams.size());
		this.event = new Extremes(teams.size());
		this.eventByFinish = new Extremes[teams.waiting()];
		for (int i = 0; i < this.eventByFinish.length; i++) {
			this.eventByFinish[i] = new Extremes(Finish.count(teams.size()));
		}
	}

	/** Note the places that these positions make, all teams of the block level. */
	void note(int[] block) {
		rankMarked(block);
		long ofBlock = this.keys.block(block);
		for (int team = this.teams.marked(); team < this.teams.size(); team++) {
			this.inSegment.key(team, ofBlock);
		}
		notePlaces();
	}

	/**
	 * Note them also where the block's teams are one behind the other, in some orders.
	 */
	void noteInOrders(int[] block) {
		note(block);
		if (this.teams.waiting() > 1 && this.teams.cards().hasRoom(block, this.teams.waiting())) {
			for (int[] order : this.orders) {
				rankMarked(block);
				for (int before = 0; before < order.length; before++) {
					this.inSegment.key(order[before], this.keys.inBlock(block, before));
				}
				notePlaces();
			}
		}
	}

	private void rankMarked(int[] block) {
		for (int team = 0; team < this.teams.marked(); team++) {
			this.inSegment.key(team, this.keys.marked(team, block));
		}
	}

	private void notePlaces() {
		this.inSegment.sort();
		for (int team = 0; team < this.teams.size(); team++) {
			this.segment.note(team, this.inSegment.place(team));
		}
		if (this.events != null) {
			noteEvent(this.events);
		}
	}

	private void noteEvent(EventKeys keys) {
		for (int team = 0; team < this.teams.size(); team++) {
			this.inEvent.key(team, keys.competes(team) ? keys.key(team, this.inSegment.place(team)) : Long.MAX_VALUE);
		}
		this.inEvent.sort();
		int waiting = this.teams.marked();
		for (int team = 0; team < this.teams.size(); team++) {
			if (keys.competes(team)) {
				this.event.note(team, this.inEvent.place(team));
				if (team >= waiting) {
					int finish = Finish.of(this.inSegment.place(team), this.inSegment.isShared(team));
					this.eventByFinish[team - waiting].note(finish, this.inEvent.place(team));
				}
			}
		}
	}

	/** Note that teams still to skate can be last of all. */
	void noteLastPlace() {
		for (int team = this.teams.marked(); team < this.teams.size(); team++) {
			this.segment.note(team, this.teams.size());
		}
	}

	Extremes segment() {
		return this.segment;
	}

	Extremes event() {
		return this.event;
	}

	/** By team still to skate, then by {@link Finish}. */
	Extremes[] byFinish() {
		return this.eventByFinish;
	}

}
