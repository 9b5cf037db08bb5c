package rimebook.documents;

import org.springframework.stereotype.Component;

import rimebook.competition.Competitions;
import rimebook.competition.EventId;
import rimebook.competition.EventView;
import rimebook.competition.SegmentId;

/** Finds what a document is about. */
@Component
class Subjects {

	private final Competitions competitions;

	Subjects(Competitions competitions) {
		this.competitions = competitions;
	}

	DocumentContent.Subject of(EventId id) {
		EventView event = this.competitions.event(id);
		return new DocumentContent.Subject(this.competitions.competition(event.competition()), event, null);
	}

	DocumentContent.Subject of(SegmentId id) {
		EventView event = this.competitions.eventOf(id);
		return new DocumentContent.Subject(this.competitions.competition(event.competition()), event,
				event.segment(id));
	}

}
