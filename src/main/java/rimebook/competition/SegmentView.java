package rimebook.competition;

import rimebook.tabulation.SegmentKind;

/**
 * A segment of an event.
 *
 * @param position place in the order of the day, from 1
 * @param slug its name in public addresses, unique within the event
 * @param factor weight of its places in the event's result, in hundredths: 50 is 0.5
 * @param programmeSeconds length of the programme
 * @param toleranceSeconds how far a programme may be longer or shorter
 */
public record SegmentView(SegmentId id, EventId event, int position, String slug, String name, SegmentKind kind,
		int factor, int programmeSeconds, int toleranceSeconds) {

	/** The facts of this segment as a draft, for a form or a copy. */
	public DraftSegment draft() {
		return new DraftSegment(this.name, this.kind, this.factor, this.programmeSeconds, this.toleranceSeconds);
	}

}
