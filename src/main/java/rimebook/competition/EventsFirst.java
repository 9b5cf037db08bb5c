package rimebook.competition;

import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.wording.Sentence;

/** Entries need an event to go into. */
@Component
class EventsFirst implements CompetitionMoveGuard {

	private final EventRepository events;

	EventsFirst(EventRepository events) {
		this.events = events;
	}

	@Override
	public Optional<Sentence> refusal(CompetitionView competition, CompetitionState next) {
		if (next != CompetitionState.ENTRIES_OPEN || this.events.existsByCompetitionId(competition.id().value())) {
			return Optional.empty();
		}
		return Optional.of(Sentence.of("competition.no-event-yet"));
	}

}
