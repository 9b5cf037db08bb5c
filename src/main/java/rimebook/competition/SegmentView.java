package rimebook.competition;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.SegmentKind;

/**
 * A segment of an event.
 *
 * @param position place in the order of the day, from 1
 * @param slug its name in public addresses, unique within the event
 * @param factor weight of its places in the event's result, in hundredths: 50 is 0.5
 * @param programmeSeconds length of the programme
 * @param toleranceSeconds how far a programme may be longer
 * @param shorterSeconds how far it may be shorter; {@code null} where only the longest is
 * limited
 * @param cancelled why it does not take place, empty if it does
 * @param cancelledAt since when, UTC, {@code null} if it takes place
 */
public record SegmentView(SegmentId id, EventId event, int position, String slug, String name, SegmentKind kind,
		int factor, int programmeSeconds, int toleranceSeconds, @Nullable Integer shorterSeconds, String cancelled,
		@Nullable Instant cancelledAt) {

	/** One that takes place, whose programme may be as much shorter as longer. */
	public SegmentView(SegmentId id, EventId event, int position, String slug, String name, SegmentKind kind,
			int factor, int programmeSeconds, int toleranceSeconds) {
		this(id, event, position, slug, name, kind, factor, programmeSeconds, toleranceSeconds, toleranceSeconds, "",
				null);
	}

	/** Tell whether the segment itself is cancelled; its event may be as well. */
	public boolean isCancelled() {
		return !this.cancelled.isEmpty();
	}

	SegmentView at(int position) {
		return new SegmentView(this.id, this.event, position, this.slug, this.name, this.kind, this.factor,
				this.programmeSeconds, this.toleranceSeconds, this.shorterSeconds, this.cancelled, this.cancelledAt);
	}

	/** The facts of this segment as a draft, for a form or a copy. */
	public DraftEvent.DraftSegment draft() {
		return new DraftEvent.DraftSegment(this.name, this.kind, this.factor, this.programmeSeconds,
				this.toleranceSeconds, this.shorterSeconds);
	}

}
