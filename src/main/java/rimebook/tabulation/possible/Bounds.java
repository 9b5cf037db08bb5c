package rimebook.tabulation.possible;

import org.jspecify.annotations.Nullable;

/**
 * What cannot be exceeded.
 *
 * @param segment best and worst places in the segment
 * @param event the same in the event; nothing in it where there is none
 * @param byFinish places in the event by team still to skate, then by {@link Finish}
 */
record Bounds(Extremes segment, Extremes event, Extremes[] byFinish) {

	/** Bounds that are known since everything was tried. */
	static Bounds reached(Reached reached) {
		return new Bounds(reached.segment(), reached.event(), reached.byFinish());
	}

	static Bounds proved(Teams teams, RankKeys keys, @Nullable EventKeys events, Reached reached) {
		Searches searches = new Searches(teams, keys, reached);
		SegmentBounds segment = (teams.waiting() == 1) ? SegmentBounds.ofOne(teams, searches, reached)
				: SegmentBounds.ofSeveral(teams, keys, searches, reached);
		if (events == null) {
			return new Bounds(segment.places(), new Extremes(0), new Extremes[0]);
		}
		EventBounds event = EventBounds.of(teams, segment, events);
		return new Bounds(segment.places(), event.places(), event.byFinish());
	}

}
