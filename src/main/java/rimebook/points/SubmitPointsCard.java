package rimebook.points;

import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;

/**
 * A judge's card in points judging.
 *
 * @param id made by the device, the same for every repetition of this very card
 * @param performance whose card it is
 * @param sequence 1 for the first card of a performance, one more for each change
 * @param marks a grade for each element that counts and a mark for each component
 * @param listSequence the version of the list of called elements that the grades were
 * given to, {@code null} for the newest when the card is received
 */
public record SubmitPointsCard(UUID id, PerformanceId performance, int sequence, PointsMarks marks,
		@Nullable Integer listSequence) {

	/** A card given to the newest list of elements. */
	public SubmitPointsCard(UUID id, PerformanceId performance, int sequence, PointsMarks marks) {
		this(id, performance, sequence, marks, null);
	}

	boolean isGivenTo(int list) {
		return this.listSequence == null || this.listSequence == list;
	}

}
