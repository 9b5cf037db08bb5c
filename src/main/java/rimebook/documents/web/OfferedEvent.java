package rimebook.documents.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

	/** The same text as long as the page shows the same, whichever node is asked. */
	static String print(List<OfferedEvent> all) {
		String shown = all.stream().map(OfferedEvent::shown).collect(Collectors.joining("\n"));
		return UUID.nameUUIDFromBytes(shown.getBytes(StandardCharsets.UTF_8)).toString();
	}

	private String shown() {
		return Stream
			.concat(Stream.of(this.event.name(), this.whole),
					this.segments.stream().flatMap((one) -> Stream.of(one.segment().name(), one.documents())))
			.map(Object::toString)
			.collect(Collectors.joining("\n"));
	}

	/** What can be printed of one segment. */
	record OfferedSegment(SegmentView segment, List<DocumentRef> documents) {
	}

}
