package rimebook.panels.web;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.entries.Entries;

/** The names of all teams that are entered somewhere, to pick from. */
@Component
class KnownTeams {

	private final Competitions competitions;

	private final Entries entries;

	KnownTeams(Competitions competitions, Entries entries) {
		this.competitions = competitions;
		this.entries = entries;
	}

	List<String> known() {
		return this.competitions.all()
			.stream()
			.flatMap((competition) -> this.competitions.events(competition.id()).stream())
			.flatMap((event) -> this.entries.ofEvent(event.id()).stream())
			.map((entry) -> entry.team().name())
			.distinct()
			.sorted()
			.toList();
	}

}
