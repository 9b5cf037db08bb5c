package rimebook.live;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.springframework.stereotype.Component;

import rimebook.competition.EventView;

/**
 * Chooses what the big screen shows: the segment that is being skated, else the last one.
 */
@Component
class Board {

	private static final Comparator<BoardView> LATEST = Comparator.<BoardView, Boolean>comparing(Board::isOnIce)
		.thenComparing((view) -> view.facts().phase().isRunning())
		.thenComparing(Board::published);

	private final SegmentReader reader;

	Board(SegmentReader reader) {
		this.reader = reader;
	}

	Optional<BoardView> of(List<EventView> events) {
		return events.stream()
			.flatMap((event) -> this.reader.all(event).stream().map((facts) -> BoardView.of(event, facts)))
			.filter((view) -> view.facts().result() != null)
			.max(LATEST);
	}

	private static boolean isOnIce(BoardView view) {
		return view.facts().onIce() != null;
	}

	private static Instant published(BoardView view) {
		return (view.facts().version() != null) ? view.facts().version().publishedAt() : Instant.EPOCH;
	}

}
