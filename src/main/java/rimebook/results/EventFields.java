package rimebook.results;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

import rimebook.competition.EventView;
import rimebook.competition.SegmentId;
import rimebook.entries.Entries;
import rimebook.entries.EntryId;
import rimebook.entries.EntryView;
import rimebook.performances.PerformanceView;
import rimebook.performances.SegmentRun;

/** Looks up who has left an event, and who is still to skate. */
@Component
class EventFields {

	private final Entries entries;

	private final SegmentRun run;

	EventFields(Entries entries, SegmentRun run) {
		this.entries = entries;
		this.run = run;
	}

	/**
	 * The field of an event.
	 * @param segments one standing a segment, {@code null} where none is yet
	 * @param changed the segment whose standing is being made
	 * @param toSkate the entries still to skate that segment
	 */
	MethodStandings.EventField of(EventView event, List<@Nullable Standing> segments, SegmentId changed,
			List<EntryId> toSkate) {
		SegmentId current = event.segments().get(lastBegun(segments)).id();
		return new MethodStandings.EventField(withdrawn(event),
				texts(current.equals(changed) ? toSkate : toSkate(current)));
	}

	/** The field of an event as it is. */
	MethodStandings.EventField of(EventView event, List<@Nullable Standing> segments) {
		SegmentId current = event.segments().get(lastBegun(segments)).id();
		return of(event, segments, current, toSkate(current));
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

	private Set<String> withdrawn(EventView event) {
		return texts(this.entries.ofEvent(event.id())
			.stream()
			.filter((entry) -> !entry.isEntered())
			.map(EntryView::id)
			.toList());
	}

	private static Set<String> texts(List<EntryId> entries) {
		return entries.stream().map(EntryId::toString).collect(Collectors.toSet());
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
