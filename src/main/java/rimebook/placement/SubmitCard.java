package rimebook.placement;

import java.util.UUID;

import rimebook.performances.PerformanceId;
import rimebook.tabulation.CardMarks;

/**
 * A judge's card as the device sends it.
 *
 * @param id made by the device, the same for every repetition of this very card
 * @param performance whose card it is
 * @param sequence 1 for the first card of a performance, one more for each change
 * @param marks the two marks
 */
public record SubmitCard(UUID id, PerformanceId performance, int sequence, CardMarks marks) {
}
