package rimebook.tabulation.possible;

/**
 * Bounds of the places in the event. For every place that a team can have in the segment
 * it counts who is ahead of it in the event at any rate and who may be; others are
 * confined to the places that their order against this team leaves them and, with one
 * team still to skate, to those that its finish leaves them.
 */
final class EventBounds {

	private final Teams teams;

	private final EventKeys keys;

	private final Extremes places;

	/** By team still to skate, then by {@link Finish}. */
	private final Extremes[] byFinish;

	private EventBounds(Teams teams, EventKeys keys) {
		this.teams = teams;
		this.keys = keys;
		this.places = new Extremes(teams.size());
		this.byFinish = new Extremes[teams.waiting()];
		for (int i = 0; i < this.byFinish.length; i++) {
			this.byFinish[i] = new Extremes(Finish.count(teams.size()));
		}
	}

	static EventBounds of(Teams teams, SegmentBounds segment, EventKeys keys) {
		EventBounds bounds = new EventBounds(teams, keys);
		int waiting = teams.marked();
		if (teams.waiting() > 1) {
			bounds.boundMarked(Spans.of(teams, segment));
		}
		for (int finish : Finish.between(segment.places().best(waiting), segment.places().worst(waiting),
				teams.size())) {
			Spans spans = Spans.of(teams, segment, finish);
			if (teams.waiting() == 1) {
				bounds.boundMarked(spans);
			}
			bounds.boundWaiting(spans.withFinish(finish), finish);
		}
		return bounds;
	}

	private void boundMarked(Spans spans) {
		if (!spans.isPossible()) {
			return;
		}
		for (int team = 0; team < this.teams.marked(); team++) {
			if (this.keys.competes(team)) {
				for (int place : spans.placesOf(team)) {
					Spans confined = spans.withPlace(team, place);
					if (confined.isPossible()) {
						confined.ahead(this.keys, team, place).noteIn(this.places, team);
					}
				}
			}
		}
	}

	private void boundWaiting(Spans spans, int finish) {
		for (int team = this.teams.marked(); team < this.teams.size(); team++) {
			if (this.keys.competes(team) && spans.isPossible()) {
				Ahead ahead = spans.ahead(this.keys, team, Finish.place(finish));
				ahead.noteIn(this.places, team);
				ahead.noteIn(this.byFinish[team - this.teams.marked()], finish);
			}
		}
	}

	Extremes places() {
		return this.places;
	}

	Extremes[] byFinish() {
		return this.byFinish;
	}

}
