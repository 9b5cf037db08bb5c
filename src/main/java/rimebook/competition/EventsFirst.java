package rimebook.competition;

import java.util.Optional;

import org.springframework.stereotype.Component;

/** Entries need an event to go into. */
@Component
class EventsFirst implements CompetitionMoveGuard {

	private final EventRepository events;

	EventsFirst(EventRepository events) {
		this.events = events;
	}

	@Override
	public Optional<String> refusal(CompetitionView competition, CompetitionState next) {
		if (next != CompetitionState.ENTRIES_OPEN || this.events.existsByCompetitionId(competition.id().value())) {
			return Optional.empty();
		}
		return Optional.of("The competition has no event yet; add one before you open entries.");
	}

}
