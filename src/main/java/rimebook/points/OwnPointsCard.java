package rimebook.points;

import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;
import rimebook.tabulation.points.ElementCode;

/**
 * A seat's own card of a performance judged by points, to be looked up.
 *
 * @param elements what counts, in the order skated
 * @param card the version that counts
 * @param closed whether it can no longer be changed
 */
public record OwnPointsCard(PerformanceId performance, int startNumber, String team, List<Graded> elements,
		PointsTask.OwnCard card, boolean closed) {

	public OwnPointsCard {
		elements = List.copyOf(elements);
	}

	/**
	 * An element with this seat's grade.
	 *
	 * @param element the element itself, as {@link ElementCode#elementOf} says it
	 * @param grade {@code null} where the seat gave none
	 */
	public record Graded(UUID id, int number, String code, String element, @Nullable Integer grade) {
	}

}
