package rimebook.protests;

import java.time.Instant;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.marks.MarkWords;
import rimebook.marks.PerformanceId;
import rimebook.panels.SeatId;
import rimebook.tabulation.CardMarks;

/**
 * A correction of one closed card.
 *
 * @param protest the protest that led to it, or {@code null}
 * @param old the marks it was proposed on, {@code null} in points judging
 * @param corrected the marks that shall count, {@code null} in points judging
 * @param change what it changes in points judging, {@code null} in placement judging
 */
public record CorrectionView(CorrectionId id, SegmentId segment, PerformanceId performance, SeatId seat,
		@Nullable ProtestId protest, @Nullable CardMarks old, @Nullable CardMarks corrected,
		@Nullable PointsChange change, String reason, CorrectionState state, String proposedBy, Instant proposedAt,
		String decidedBy, @Nullable Instant decidedAt, String decisionReason, int version) {

	/** What it was proposed on, in words. */
	public String oldWords() {
		return (this.change != null) ? this.change.line().words(this.change.old())
				: MarkWords.of(Objects.requireNonNull(this.old));
	}

	/** What shall count, in words. */
	public String correctedWords() {
		return (this.change != null) ? this.change.line().words(this.change.corrected())
				: MarkWords.of(Objects.requireNonNull(this.corrected));
	}

	/** Which line of the card it changes, in words; empty where it changes both marks. */
	public String lineWords() {
		return (this.change != null) ? this.change.line().words() : "";
	}

}
