package rimebook.documents;

import java.util.UUID;

import rimebook.competition.EventId;
import rimebook.competition.SegmentId;
import rimebook.shared.NotFoundException;

/**
 * Names one document.
 *
 * @param subject the event or segment it is about
 * @param version which version of the standing it shows; 0 for the newest, and where
 * there are no versions
 */
public record DocumentRef(DocumentKind kind, UUID subject, int version) {

	/** A document about an event. */
	public static DocumentRef of(DocumentKind kind, EventId event, int version) {
		return new DocumentRef(kind, event.value(), version);
	}

	/** A document about a segment. */
	public static DocumentRef of(DocumentKind kind, SegmentId segment, int version) {
		return new DocumentRef(kind, segment.value(), version);
	}

	/**
	 * A document by the words of an address.
	 * @throws NotFoundException if no kind is called that
	 */
	public static DocumentRef of(String kind, UUID subject, int version) {
		return new DocumentRef(DocumentKind.ofWord(kind).orElseThrow(() -> NotFoundException.of("document", kind)),
				subject, version);
	}

	EventId event() {
		return new EventId(this.subject);
	}

	SegmentId segment() {
		return new SegmentId(this.subject);
	}

}
