package rimebook.results;

import java.util.Map;
import java.util.Objects;
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

	Teams of(EventId event) {
		return new Teams(this.entries.ofEvent(event)
			.stream()
			.collect(Collectors.toMap((entry) -> entry.id().toString(),
					(entry) -> new Named(entry.team().name(), entry.team().club().name()))));
	}

	/** The teams of an event; whoever has a place in it is among them. */
	record Teams(Map<String, Named> byEntry) {

		Named of(String entry) {
			return Objects.requireNonNull(this.byEntry.get(entry));
		}

	}

	record Named(String team, String club) {
	}

}
