package rimebook.live;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.results.ResultVersion;
import rimebook.results.Standings;

/**
 * Chooses what the big screen shows: the team on the ice; between two teams the segment
 * that is being skated; else the result that was published last, which stays until the
 * next team is called.
 */
@Component
class Board {

	private final SegmentReader reader;

	private final Standings standings;

	Board(SegmentReader reader, Standings standings) {
		this.reader = reader;
		this.standings = standings;
	}

	Optional<BoardView> of(List<EventView> events) {
		return events.stream()
			.flatMap((event) -> this.reader.all(event).stream().map((facts) -> view(event, facts)))
			.filter((view) -> view.facts().result() != null)
			.max(Comparator.comparing(BoardView::facts, SegmentFacts.MOST_WATCHED));
	}

	private BoardView view(EventView event, SegmentFacts facts) {
		ResultVersion whole = this.standings.latest(event.id()).orElse(null);
		String last = (facts.version() != null) ? this.standings.lastSkated(facts.segment().id()).orElse(null) : null;
		return BoardView.of(event, facts, Tidings.ofSegment(event, facts, whole, last), last,
				(facts.segment().position() > 1) ? whole : null);
	}

}
