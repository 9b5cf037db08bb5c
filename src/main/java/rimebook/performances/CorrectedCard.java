package rimebook.performances;

import java.util.UUID;

/**
 * A closed card of a seat that two officials corrected.
 *
 * @param id the identity of the version that counts since
 * @param before what the judge gave, in words: both marks, or the lines that differ
 * @param after what counts since
 */
public record CorrectedCard(UUID id, PerformanceId performance, String before, String after) {

}
