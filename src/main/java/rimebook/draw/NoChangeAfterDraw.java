package rimebook.draw;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.wording.Sentence;

/** The segments, factors, judges and rule set of an event are settled before its draw. */
@Component
class NoChangeAfterDraw implements Competitions.EventChangeGuard {

	private final FieldFixedAfterDraw field;

	NoChangeAfterDraw(FieldFixedAfterDraw field) {
		this.field = field;
	}

	@Override
	public Optional<Sentence> refusal(EventId event) {
		return this.field.drawnSegment(event)
			.map((segment) -> Sentence.of("draw.no-change-after-draw", segment.name()));
	}

}
