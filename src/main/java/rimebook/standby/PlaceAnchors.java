package rimebook.standby;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import rimebook.audit.Anchor;
import rimebook.audit.RecordAnchors;

/**
 * Gives the second place anchors of the record, and notes once a minute at most that it
 * keeps them.
 */
final class PlaceAnchors {

	private static final Duration SELDOM = Duration.ofMinutes(1);

	private final RecordAnchors anchors;

	private final String place;

	private long line;

	private Instant noted = Instant.EPOCH;

	PlaceAnchors(RecordAnchors anchors, CopyFolder folder) {
		this.anchors = anchors;
		this.place = "Second place, " + folder.path();
	}

	/** The anchor of that line, as text; nothing while the record has none. */
	String text(RecordHead head) {
		return anchor(head).map(Anchor::text).orElse("");
	}

	/** The place keeps the anchor of that line now. */
	void kept(RecordHead head, Instant now) {
		if (head.line() == this.line || Duration.between(this.noted, now).abs().compareTo(SELDOM) < 0) {
			return;
		}
		anchor(head).ifPresent((anchor) -> this.anchors.noteKept(this.place, anchor));
		this.line = head.line();
		this.noted = now;
	}

	private Optional<Anchor> anchor(RecordHead head) {
		return this.anchors.ofLine(head.line()).filter((anchor) -> anchor.digest().equals(head.digest()));
	}

}
