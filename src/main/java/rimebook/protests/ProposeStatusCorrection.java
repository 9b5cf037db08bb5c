package rimebook.protests;

import org.jspecify.annotations.Nullable;

import rimebook.performances.PerformanceId;
import rimebook.performances.PerformanceStatus;

/**
 * What one official asks another to approve: that a team came through a segment otherwise
 * than was noted.
 *
 * @param corrected withdrawn, not finished or disqualified; closed where its marks shall
 * count again; waiting or on the ice where it has still to skate
 * @param reason what went wrong, and who says so
 */
public record ProposeStatusCorrection(PerformanceId performance, PerformanceStatus corrected, String reason,
		@Nullable ProtestId protest) {
}
