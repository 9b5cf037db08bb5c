package rimebook.draw;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;

/** The segments, factors, judges and rule set of an event are settled before its draw. */
@Component
class NoChangeAfterDraw implements Competitions.EventChangeGuard {

	private final FieldFixedAfterDraw field;

	NoChangeAfterDraw(FieldFixedAfterDraw field) {
		this.field = field;
	}

	@Override
	public Optional<String> refusal(EventId event) {
		return this.field.drawnSegment(event)
			.map((segment) -> "The starting order of " + segment.name()
					+ " is drawn, so the event stays as it was when its teams drew. "
					+ "To run it otherwise, copy the event under another name and enter the teams there.");
	}

}
