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
import rimebook.tabulation.Figures;
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
	List<Figures.Measure> measures() {
		Figures.Measure complete = new Figures.Measure(Criterion.EVERY_SEGMENT, isComplete() ? 1 : 0);
		if (!isComplete()) {
			return List.of(complete, new Figures.Measure(Criterion.SEGMENT_REACHED, reached()),
					new Figures.Measure(Criterion.PLACE_IN_SEGMENT_REACHED, last().place()));
		}
		Figures.Measure total = new Figures.Measure(Criterion.TOTAL_POINTS, total().hundredths());
		Figures.Measure tieBreak = (this.segments.size() == 1)
				? new Figures.Measure(Criterion.LAST_SEGMENT_PLACE, last().place())
				: new Figures.Measure(Criterion.LAST_SEGMENT_POINTS, last().total().hundredths());
		return List.of(complete, total, tieBreak);
	}

	/**
	 * What a team brings from one segment into the result of the event.
	 *
	 * @param place in the segment, from 1
	 * @param total of the segment
	 */
	public record SegmentTotal(int place, Points total) {

		private static final int HIGHEST_PLACE = 9999;

		private static final int MOST = 100_000_000;

		/**
		 * Check the figures.
		 * @throws TabulationException {@code place-out-of-range} or
		 * {@code total-out-of-range}: beyond a million points
		 */
		public SegmentTotal {
			if (place < 1 || place > HIGHEST_PLACE) {
				throw Refusal.placeOutOfRange(place, HIGHEST_PLACE);
			}
			if (!total.isBetween(-MOST, MOST)) {
				throw Refusal.totalOutOfRange(total);
			}
		}

	}

}
