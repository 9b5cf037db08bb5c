package rimebook.live;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;

/**
 * All that is public of an event.
 *
 * @param segments its segments, in order
 * @param table its combined standing, {@code null} before the first
 */
record EventFacts(EventView event, List<SegmentFacts> segments, @Nullable StandingTable table) {

	EventFacts {
		segments = List.copyOf(segments);
	}

	/** The segment that is being skated, {@code null} for none. */
	public @Nullable SegmentFacts running() {
		return this.segments.stream().filter((facts) -> facts.phase().isRunning()).findFirst().orElse(null);
	}

}
