package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.Criterion;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Measure;
import rimebook.tabulation.TabulationException;

/**
 * One team's totals in the segments of an event.
 *
 * @param entry identifier, unique in the event
 * @param status {@code SKATED} gets a final place; withdrawn, not finished and
 * disqualified teams are listed without one
 * @param segments in the order skated, null where the team has no total: not qualified
 * for it, not skated yet
 */
public record EntryTotals(String entry, EntryStatus status, List<@Nullable SegmentTotal> segments) {

	/**
	 * Check the entry by itself.
	 * @throws TabulationException {@code entry-missing}
	 */
	public EntryTotals {
		segments = Collections.unmodifiableList(new ArrayList<>(segments));
		if (entry.isBlank()) {
			throw Refusal.blankEntry();
		}
	}

	/**
	 * Return a team that stays in the event.
	 * @param entry identifier
	 * @param segments its totals, null where it has none
	 * @return the entry
	 */
	public static EntryTotals of(String entry, @Nullable SegmentTotal... segments) {
		return new EntryTotals(entry, EntryStatus.SKATED, Arrays.asList(segments));
	}

	boolean hasStarted() {
		return this.segments.stream().anyMatch(Objects::nonNull);
	}

	boolean isComplete() {
		return this.segments.stream().allMatch(Objects::nonNull);
	}

	Points total() {
		return Points.sum(this.segments.stream().flatMap(Stream::ofNullable).map(SegmentTotal::total).toList());
	}

	/** Return the last segment with a total; there must be one. */
	private SegmentTotal last() {
		return Objects.requireNonNull(this.segments.get(reached() - 1));
	}

	private int reached() {
		int reached = 0;
		for (int i = 0; i < this.segments.size(); i++) {
			reached = (this.segments.get(i) != null) ? i + 1 : reached;
		}
		return reached;
	}

	/** Return the measures of a team that has started. */
	List<Measure> measures() {
		Measure complete = new Measure(Criterion.EVERY_SEGMENT, isComplete() ? 1 : 0);
		if (!isComplete()) {
			return List.of(complete, new Measure(Criterion.SEGMENT_REACHED, reached()),
					new Measure(Criterion.PLACE_IN_SEGMENT_REACHED, last().place()));
		}
		Measure total = new Measure(Criterion.TOTAL_POINTS, total().hundredths());
		Measure tieBreak = (this.segments.size() == 1) ? new Measure(Criterion.LAST_SEGMENT_PLACE, last().place())
				: new Measure(Criterion.LAST_SEGMENT_POINTS, last().total().hundredths());
		return List.of(complete, total, tieBreak);
	}

}
