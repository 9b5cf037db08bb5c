package rimebook.live;

import java.time.Instant;
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

	private static final Comparator<BoardView> LATEST = Comparator.<BoardView, Boolean>comparing(Board::isOnIce)
		.thenComparing(Board::isUnderWay)
		.thenComparing(Board::published);

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
			.max(LATEST);
	}

	private BoardView view(EventView event, SegmentFacts facts) {
		ResultVersion version = facts.version();
		if (version == null) {
			return BoardView.of(event, facts, null, null);
		}
		String last = this.standings.lastSkated(facts.segment().id()).orElse(null);
		ResultVersion combined = (facts.segment().position() > 1) ? this.standings.latest(event.id()).orElse(null)
				: null;
		return BoardView.of(event, facts, last, combined);
	}

	private static boolean isOnIce(BoardView view) {
		return view.facts().onIce() != null;
	}

	private static boolean isUnderWay(BoardView view) {
		return view.facts().phase() == SegmentFacts.Phase.UNDER_WAY;
	}

	private static Instant published(BoardView view) {
		return (view.facts().version() != null) ? view.facts().version().publishedAt() : Instant.EPOCH;
	}

}
