package rimebook.points;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.points.ElementCode;

/**
 * What a seat has to give the performance on the ice in points judging, and what it has
 * given.
 *
 * @param listSequence the version of the list of called elements, 0 before the first
 * @param elements in the order skated
 * @param takenOut what this seat has graded and is not called any more, until it is
 * confirmed
 * @param components the names of the components to mark
 * @param highestGrade the highest grade of an element; the lowest is its negative
 * @param authorised whether the technical controller has authorised the list
 * @param card the seat's own card, {@code null} before the first
 */
public record PointsTask(int listSequence, List<Element> elements, List<TakenOut> takenOut, List<String> components,
		int highestGrade, boolean authorised, @Nullable OwnCard card) {

	public PointsTask {
		elements = List.copyOf(elements);
		takenOut = List.copyOf(takenOut);
		components = List.copyOf(components);
	}

	/**
	 * A called element.
	 *
	 * @param element the element itself, as {@link ElementCode#elementOf} says it: a
	 * grade stands while it stays the same
	 * @param name the code in words
	 * @param counts whether it has to be graded
	 * @param review whether the technical panel still looks at it again
	 * @param confirm whether it is another element than when this seat graded it
	 */
	public record Element(UUID id, int number, String code, String element, String name, boolean counts, boolean review,
			boolean confirm) {

		/** An element as it was called when the seat graded it. */
		public Element(UUID id, int number, String code, String name, boolean counts) {
			this(id, number, code, ElementCode.elementOf(code), name, counts, false, false);
		}

	}

	/** An element that was taken out, with its number and code when it was graded. */
	public record TakenOut(UUID id, int number, String code) {
	}

	/** The seat's own newest card. */
	public record OwnCard(int sequence, PointsMarks marks, Instant receivedAt) {
	}

}
