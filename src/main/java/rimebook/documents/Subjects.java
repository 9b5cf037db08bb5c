package rimebook.documents;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.CompetitionView;
import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.competition.SegmentView;
import rimebook.published.Standing;

/** Finds what a document is about. */
@Component
class Subjects {

	private final Competitions competitions;

	Subjects(Competitions competitions) {
		this.competitions = competitions;
	}

	DocumentContent.Subject of(EventId id) {
		return of(this.competitions.event(id), null);
	}

	DocumentContent.Subject of(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		return of(event, event.segment(id));
	}

	private DocumentContent.Subject of(EventView event, @Nullable SegmentView segment) {
		CompetitionView competition = this.competitions.competition(event.competition());
		return new DocumentContent.Subject(Standing.Venue.of(competition.facts()), event, segment,
				DocumentContent.Names.of(competition, event, segment));
	}

}
