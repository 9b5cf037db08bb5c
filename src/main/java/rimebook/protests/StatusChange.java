package rimebook.protests;

import rimebook.performances.PerformanceStatus;

/**
 * What a correction changes in how a team came through a segment.
 *
 * @param old how it was proposed on
 * @param corrected how it shall be
 */
public record StatusChange(PerformanceStatus old, PerformanceStatus corrected) {
}
