package rimebook.panels;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventId;

/** Stands for the run of segments: keeps the judges of the event that is on the ice. */
class Segments implements Panels.Guard {

	@Nullable EventId running;

	@Override
	public Optional<String> refusal(EventId event) {
		return event.equals(this.running) ? Optional.of("A segment is open.") : Optional.empty();
	}

}
