package rimebook.entries.web;

import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionState;
import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.UnderWay;
import rimebook.entries.Entries;
import rimebook.entries.EntryView;
import rimebook.pages.Waiting;
import rimebook.pages.WaitingList;
import rimebook.shared.Actor;

/** The competitions whose entries are open still, with the teams so far. */
@Component
class EntriesWaiting implements WaitingList {

	private final UnderWay underWay;

	private final Competitions competitions;

	private final Entries entries;

	EntriesWaiting(UnderWay underWay, Competitions competitions, Entries entries) {
		this.underWay = underWay;
		this.competitions = competitions;
		this.entries = entries;
	}

	@Override
	public Stream<Waiting> waiting(Actor viewer) {
		return this.underWay.competitions(CompetitionState.ENTRIES_OPEN)
			.map((competition) -> new Waiting(60, "entries.waiting.open", teams(competition),
					new Waiting.Place(competition.name(), ""), "/desk/competitions/" + competition.id()));
	}

	private int teams(CompetitionView competition) {
		return (int) this.competitions.events(competition.id())
			.stream()
			.flatMap((event) -> this.entries.ofEvent(event.id()).stream())
			.filter(EntryView::isEntered)
			.count();
	}

}
