package rimebook.marks;

import java.util.UUID;

/**
 * A judge's card in points judging.
 *
 * @param id made by the device, the same for every repetition of this very card
 * @param performance whose card it is
 * @param sequence 1 for the first card of a performance, one more for each change
 * @param marks a grade for each element that counts and a mark for each component
 */
public record SubmitPointsCard(UUID id, PerformanceId performance, int sequence, PointsMarks marks) {
}
