package rimebook.performances;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryStatus;

/**
 * A performance from which nothing more is expected.
 *
 * @param status whether it has marks that count, or why not
 * @param marks what was closed, {@code null} for nothing. A team disqualified after its
 * cards were closed keeps them
 */
public record ClosedPerformance(PerformanceId id, EntryId entry, int startNumber, EntryStatus status,
		@Nullable ClosedMarks marks) {

	/** The cards of two marks; empty without marks and in points judging. */
	public List<CardMarks> cards() {
		return (this.marks instanceof ClosedMarks.PanelMarks panel) ? panel.cards() : List.of();
	}

	/** What its score is made of; {@code null} without marks and in placement judging. */
	public ClosedMarks.@Nullable PointsSheet sheet() {
		return (this.marks instanceof ClosedMarks.PointsSheet sheet) ? sheet : null;
	}

	/**
	 * Tell whether the team is counted among those that started; one that withdrew is
	 * counted nowhere.
	 */
	public boolean hasStarted() {
		return this.status != EntryStatus.WITHDRAWN;
	}

	/** How many of these have started. */
	public static int started(List<ClosedPerformance> closed) {
		return (int) closed.stream().filter(ClosedPerformance::hasStarted).count();
	}

}
