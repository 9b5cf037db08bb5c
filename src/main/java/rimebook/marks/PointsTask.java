package rimebook.marks;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * What a seat has to give the performance on the ice in points judging, and what it has
 * given.
 *
 * @param listSequence the version of the list of called elements, 0 before the first
 * @param elements in the order skated
 * @param components the names of the components to mark
 * @param highestGrade the highest grade of an element; the lowest is its negative
 * @param authorised whether the technical controller has authorised the list
 * @param card the seat's own card, {@code null} before the first
 */
public record PointsTask(int listSequence, List<Element> elements, List<String> components, int highestGrade,
		boolean authorised, @Nullable OwnCard card) {

	public PointsTask {
		elements = List.copyOf(elements);
		components = List.copyOf(components);
	}

	/**
	 * A called element.
	 *
	 * @param name the code in words
	 * @param counts whether it has to be graded
	 * @param review whether the technical panel still looks at it again
	 * @param confirm whether it is called otherwise than when this seat graded it
	 */
	public record Element(UUID id, int number, String code, String name, boolean counts, boolean review,
			boolean confirm) {

		/** An element as it was called when the seat graded it. */
		public Element(UUID id, int number, String code, String name, boolean counts) {
			this(id, number, code, name, counts, false, false);
		}

	}

	/** The seat's own newest card. */
	public record OwnCard(int sequence, PointsMarks marks, Instant receivedAt) {
	}

}
