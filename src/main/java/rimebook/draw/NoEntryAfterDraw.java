package rimebook.draw;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.entries.EntryGuard;
import rimebook.wording.Sentence;

/** No team comes into an event after its draw. */
@Component
class NoEntryAfterDraw implements EntryGuard {

	private final FieldFixedAfterDraw field;

	NoEntryAfterDraw(FieldFixedAfterDraw field) {
		this.field = field;
	}

	@Override
	public Optional<Sentence> refusesEntry(EventId event) {
		return this.field.drawnSegment(event).map((segment) -> Sentence.of("draw.no-entry-after-draw", segment.name()));
	}

}
