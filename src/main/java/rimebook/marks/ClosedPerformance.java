package rimebook.marks;

import java.util.List;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;
import rimebook.tabulation.CardMarks;
import rimebook.tabulation.EntryStatus;

/**
 * A performance from which nothing more is expected.
 *
 * @param status whether it has marks that count, or why not
 * @param cards one a counting seat in the order of the seats; empty without marks. A team
 * disqualified after its cards were closed keeps them
 * @param sheet what its score is made of in points judging; {@code null} without marks
 * and in placement judging
 */
public record ClosedPerformance(PerformanceId id, EntryId entry, int startNumber, EntryStatus status,
		List<CardMarks> cards, @Nullable PointsSheet sheet) {

	public ClosedPerformance {
		cards = List.copyOf(cards);
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
