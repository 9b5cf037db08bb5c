package rimebook.live;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.competition.EventView;
import rimebook.results.ResultVersion;

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

	/** The newest version of its combined standing, {@code null} before the first. */
	public @Nullable ResultVersion version() {
		return (this.table != null) ? this.table.version() : null;
	}

	/** Tell whether its result is signed. */
	public boolean isOfficial() {
		return this.table != null && this.table.isOfficial();
	}

	/**
	 * The segment that is told of: the one that is skated, once a team has; else the last
	 * that was, else the first; {@code null} where none takes place.
	 */
	public @Nullable SegmentFacts told() {
		List<SegmentFacts> held = this.segments.stream().filter((facts) -> facts.cancelled().isEmpty()).toList();
		Stream<SegmentFacts> skated = held.stream()
			.filter((facts) -> facts.skated() > 0)
			.sorted(Comparator.comparing(SegmentFacts::position).reversed());
		return Stream
			.of(held.stream().filter((facts) -> facts.phase() == SegmentFacts.Phase.UNDER_WAY), skated, held.stream())
			.flatMap((found) -> found)
			.findFirst()
			.orElse(null);
	}

}
