package rimebook.panels;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;
import rimebook.wording.Sentence;

/** Stands for the run of segments: keeps the judges of the event that is on the ice. */
class Segments implements Panels.Guard {

	@Nullable EventId running;

	@Override
	public Optional<Sentence> refusal(EventId event) {
		return event.equals(this.running) ? Optional.of(Sentence.said("A segment is open.")) : Optional.empty();
	}

}
