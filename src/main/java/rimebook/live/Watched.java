package rimebook.live;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The segment of a competition on which most eyes are.
 *
 * @param facts its event
 */
record Watched(EventFacts facts, SegmentFacts segment) {

	/** Find it; none before the first segment is opened. */
	static Optional<Watched> of(List<EventFacts> events) {
		return events.stream()
			.filter((facts) -> !facts.event().isCancelled())
			.flatMap((facts) -> facts.segments().stream().map((segment) -> new Watched(facts, segment)))
			.filter((watched) -> watched.segment().result() != null && watched.segment().cancelled().isEmpty())
			.max(Comparator.comparing(Watched::segment, SegmentFacts.MOST_WATCHED));
	}

	/**
	 * Tell whether there is anything to see now: a team on the ice, or the next to come.
	 */
	public boolean isNow() {
		return this.segment.isIceOfInterest();
	}

}
