package rimebook.protests;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.marks.PerformanceId;
import rimebook.panels.SeatId;
import rimebook.tabulation.CardMarks;

/**
 * A correction of one closed card.
 *
 * @param protest the protest that led to it, or {@code null}
 * @param old the marks it was proposed on
 * @param corrected the marks that shall count
 */
public record CorrectionView(CorrectionId id, SegmentId segment, PerformanceId performance, SeatId seat,
		@Nullable ProtestId protest, CardMarks old, CardMarks corrected, String reason, CorrectionState state,
		String proposedBy, Instant proposedAt, String decidedBy, @Nullable Instant decidedAt, String decisionReason,
		int version) {
}
