package rimebook.results;

import java.util.List;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.EntryId;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;
import rimebook.published.Standing;

/** Looks up who is still to skate. */
@Component
class EventFieldReader {

	private final SegmentRun run;

	EventFieldReader(SegmentRun run) {
		this.run = run;
	}

	/**
	 * The entries still to skate the segment that is under way.
	 * @param segments one standing a segment, {@code null} where none is yet
	 * @param changed the segment whose standing is being made
	 * @param toSkate the entries still to skate that segment
	 */
	List<EntryId> toSkate(EventView event, List<@Nullable Standing> segments, SegmentId changed,
			List<EntryId> toSkate) {
		SegmentId current = current(event, segments);
		return current.equals(changed) ? toSkate : toSkate(current);
	}

	/** The same of an event as it is. */
	List<EntryId> toSkate(EventView event, List<@Nullable Standing> segments) {
		return toSkate(current(event, segments));
	}

	private static SegmentId current(EventView event, List<@Nullable Standing> segments) {
		return event.segments().get(lastBegun(segments)).id();
	}

	/** The entries that are still to skate a segment, in their order. */
	List<EntryId> toSkate(SegmentId segment) {
		return toSkate(this.run.performances(segment));
	}

	/** The entries of those that are not done, in their order. */
	static List<EntryId> toSkate(List<PerformanceView> performances) {
		return performances.stream()
			.filter((performance) -> !performance.status().isDone())
			.map(PerformanceView::entry)
			.toList();
	}

	/**
	 * While nobody has a place in a segment, the standing of the event is that of the
	 * segments before it, and nobody in it waits.
	 */
	private static int lastBegun(List<@Nullable Standing> segments) {
		int last = 0;
		for (int i = 0; i < segments.size(); i++) {
			last = hasPlaces(segments.get(i)) ? i : last;
		}
		return last;
	}

	private static boolean hasPlaces(@Nullable Standing standing) {
		return standing != null && standing.rows().stream().anyMatch((row) -> row.place() != null);
	}

}
