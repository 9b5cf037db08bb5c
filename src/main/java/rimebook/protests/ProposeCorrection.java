package rimebook.protests;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.tabulation.CardMarks;

/**
 * What one official asks another to approve.
 *
 * @param corrected the marks the judge gave and somebody mistyped
 * @param reason what went wrong, and who says so
 */
public record ProposeCorrection(PerformanceId performance, SeatId seat, CardMarks corrected, String reason,
		@Nullable ProtestId protest) {
}
