package rimebook.competition;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.SegmentKind;

/**
 * A segment of an event.
 *
 * @param position place in the order of the day, from 1
 * @param slug its name in public addresses, unique within the event
 * @param facts as the secretary wrote it down
 * @param cancellation why and since when it does not take place, {@code null} if it does
 */
public record SegmentView(SegmentId id, EventId event, int position, String slug, DraftEvent.DraftSegment facts,
		EventView.@Nullable Cancellation cancellation) {

	/** Why the segment itself does not take place, empty if it does. */
	public String cancelled() {
		return EventView.Cancellation.reasonOf(this.cancellation);
	}

	/** Tell whether the segment itself is cancelled; its event may be as well. */
	public boolean isCancelled() {
		return this.cancellation != null;
	}

	SegmentView at(int position) {
		return new SegmentView(this.id, this.event, position, this.slug, this.facts, this.cancellation);
	}

	/** Its name, unlike those of the other segments of the event. */
	public String name() {
		return this.facts.name();
	}

	/** Which kind of segment it is. */
	public SegmentKind kind() {
		return this.facts.kind();
	}

	/** Weight of its places in the event's result, in hundredths: 50 is 0.5. */
	public int factor() {
		return this.facts.factor();
	}

}
