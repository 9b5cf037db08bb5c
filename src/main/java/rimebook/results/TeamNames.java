package rimebook.results;

import java.util.Map;
import java.util.stream.Collectors;

import org.springframework.stereotype.Component;

import rimebook.competition.EventId;
import rimebook.entries.Entries;

/** What the teams of an event are called, by entry. */
@Component
class TeamNames {

	private final Entries entries;

	TeamNames(Entries entries) {
		this.entries = entries;
	}

	Map<String, Named> of(EventId event) {
		return this.entries.ofEvent(event)
			.stream()
			.collect(Collectors.toMap((entry) -> entry.id().toString(),
					(entry) -> new Named(entry.team().name(), entry.team().club().name())));
	}

	record Named(String team, String club) {
	}

}
