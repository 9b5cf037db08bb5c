package rimebook.tablets;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.apache.commons.logging.Log;
import org.apache.commons.logging.LogFactory;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.audit.Anchor;
import rimebook.audit.RecordAnchors;

/**
 * Tells tablets where the record ends, and notes which of them keep it. A tablet asks
 * every other second, so the end is looked up once for all of them, and what they keep is
 * noted seldom.
 */
@Component
class TabletAnchors {

	private static final Log log = LogFactory.getLog(TabletAnchors.class);

	private static final Duration FRESH = Duration.ofSeconds(2);

	private static final Duration SELDOM = Duration.ofSeconds(30);

	private final RecordAnchors anchors;

	private final Clock clock;

	private volatile Looked looked = Looked.NEVER;

	private final Map<String, Instant> noted = new ConcurrentHashMap<>();

	TabletAnchors(RecordAnchors anchors, Clock clock) {
		this.anchors = anchors;
		this.clock = clock;
	}

	/** The end of the record as text to keep, {@code null} while it has no line. */
	@Nullable String head() {
		Instant now = this.clock.instant();
		Looked last = this.looked;
		if (!last.isFresh(now)) {
			last = new Looked(this.anchors.head().map(Anchor::text).orElse(null), now, now.plus(FRESH));
			this.looked = last;
		}
		return last.head();
	}

	/**
	 * Note that a tablet keeps the anchor of a line. That is worth having and no more: a
	 * tablet is never kept from its table because it could not be noted.
	 * @param line its number, 0 if the tablet keeps none
	 */
	void note(JudgeTable.Heading at, long line) {
		String place = "Tablet of " + at.seat() + ", " + at.event();
		if (line > 0 && isDue(place)) {
			try {
				this.anchors.ofLine(line).ifPresent((anchor) -> this.anchors.noteKept(place, anchor));
			}
			catch (RuntimeException ex) {
				log.warn("What a tablet keeps of the record could not be looked up", ex);
			}
		}
	}

	/** Of several requests that a tablet has on their way at once, one is noted. */
	private boolean isDue(String place) {
		Instant now = this.clock.instant();
		Instant last = this.noted.putIfAbsent(place, now);
		return last == null
				|| Duration.between(last, now).abs().compareTo(SELDOM) > 0 && this.noted.replace(place, last, now);
	}

	/** What was looked up, and until when that is good enough. */
	private record Looked(@Nullable String head, Instant from, Instant until) {

		static final Looked NEVER = new Looked(null, Instant.MAX, Instant.MIN);

		/** A clock that was set back is looked at anew. */
		boolean isFresh(Instant now) {
			return !now.isBefore(this.from) && now.isBefore(this.until);
		}

	}

}
