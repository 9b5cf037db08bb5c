package rimebook.documents.web;

import java.util.List;
import java.util.UUID;

import rimebook.competition.EventView;
import rimebook.competition.SegmentView;
import rimebook.documents.DocumentRef;

/**
 * What can be printed of an event.
 *
 * @param whole about the event
 * @param segments about each of its segments, in their order
 */
record OfferedEvent(EventView event, List<DocumentRef> whole, List<OfferedSegment> segments) {

	static OfferedEvent of(EventView event, List<DocumentRef> offered) {
		return new OfferedEvent(event, about(offered, event.id().value()),
				event.segments()
					.stream()
					.map((segment) -> new OfferedSegment(segment, about(offered, segment.id().value())))
					.toList());
	}

	private static List<DocumentRef> about(List<DocumentRef> offered, UUID subject) {
		return offered.stream().filter((ref) -> ref.subject().equals(subject)).toList();
	}

	/** Tell whether nothing can be printed yet. */
	public boolean isEmpty() {
		return this.whole.isEmpty() && this.segments.stream().allMatch((one) -> one.documents().isEmpty());
	}

	/** A short print of everything shown; the same on every node and after a restart. */
	static String print(List<OfferedEvent> all) {
		return Integer.toHexString(all.toString().hashCode());
	}

	/** What can be printed of one segment. */
	record OfferedSegment(SegmentView segment, List<DocumentRef> documents) {
	}

}
