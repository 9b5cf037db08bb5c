package rimebook.results;

import java.util.Set;

import rimebook.competition.SegmentId;

/**
 * What would be otherwise than now about one team, besides its performance in the segment
 * that is looked at.
 *
 * @param entry the team's entry, empty for no team
 * @param leaves whether it would have withdrawn from the event
 * @param waitsIn the later segments in which it would be still to skate, and is ended now
 */
record Supposition(String entry, boolean leaves, Set<SegmentId> waitsIn) {

	/** Everything as it is. */
	static final Supposition NONE = new Supposition("", false, Set.of());

	Supposition {
		waitsIn = Set.copyOf(waitsIn);
	}

	EventField of(EventField field) {
		return this.leaves ? field.without(this.entry) : field.with(this.entry);
	}

	Standing of(SegmentId segment, Standing standing) {
		return this.waitsIn.contains(segment) ? standing.without(this.entry) : standing;
	}

}
