package rimebook.protests.web;

import java.util.List;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentPlace;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.pages.Choice;
import rimebook.protests.ProtestView;
import rimebook.protests.Protests;
import rimebook.results.Standings;

/** Gathers what the pages about protests and corrections show. */
@Component
class ProtestsComposer {

	private final Competitions competitions;

	private final Entries entries;

	private final Standings standings;

	private final Protests protests;

	private final CorrectionLines corrections;

	ProtestsComposer(Competitions competitions, Entries entries, Standings standings, Protests protests,
			CorrectionLines corrections) {
		this.competitions = competitions;
		this.entries = entries;
		this.standings = standings;
		this.protests = protests;
		this.corrections = corrections;
	}

	ProtestsPage of(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		return new ProtestsPage(
				new SegmentPlace(this.competitions.competition(event.competition()), event, event.segment(id)),
				this.standings.result(id).orElse(null),
				this.protests.ofSegment(id)
					.stream()
					.map((protest) -> new ProtestsPage.ProtestLine(protest, team(protest.claim().entry())))
					.toList(),
				this.corrections.ofSegment(id), this.standings.postings(id));
	}

	/** The teams of the segment's event that may protest. */
	List<Choice> teams(SegmentId segment) {
		return this.entries.ofEvent(this.competitions.eventOf(segment).id())
			.stream()
			.map((entry) -> Choice.of(entry.id(), entry.team().name()))
			.toList();
	}

	/** The upheld protests a correction may rest on. */
	List<Choice> upheld(SegmentId segment) {
		return this.protests.ofSegment(segment)
			.stream()
			.filter((protest) -> protest.state() == ProtestView.State.UPHELD)
			.map((protest) -> Choice.of(protest.id(), team(protest.claim().entry()) + ": " + protest.claim().text()))
			.toList();
	}

	private String team(EntryId entry) {
		return this.entries.entry(entry).team().name();
	}

}
