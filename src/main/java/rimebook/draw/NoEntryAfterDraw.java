package rimebook.draw;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.entries.EntryGuard;

/** No team comes into an event after its draw. */
@Component
class NoEntryAfterDraw implements EntryGuard {

	private final FieldFixedAfterDraw field;

	NoEntryAfterDraw(FieldFixedAfterDraw field) {
		this.field = field;
	}

	@Override
	public Optional<String> refusesEntry(EventId event) {
		return this.field.drawnSegment(event)
			.map((segment) -> "The starting order of " + segment.name()
					+ " is drawn and its numbers stay as they were read out, so no team can be added to this event. "
					+ "Enter the team in an event that is not drawn yet.");
	}

}
