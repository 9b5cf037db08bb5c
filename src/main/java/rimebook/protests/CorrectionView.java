package rimebook.protests;

import java.time.Instant;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.competition.SegmentId;
import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.placement.MarkWords;
import rimebook.tabulation.CardMarks;

/**
 * A correction of one closed card, of what the technical panel sent, or of how a team
 * came through.
 *
 * @param seat whose card, {@code null} where it is no judge's
 * @param protest the protest that led to it, or {@code null}
 * @param old the marks it was proposed on, {@code null} in points judging
 * @param corrected the marks that shall count, {@code null} in points judging
 * @param change what it changes on a card in points judging, else {@code null}
 * @param sheet what it changes in the elements or deductions, else {@code null}
 * @param status what it changes in how the team came through, else {@code null}
 */
public record CorrectionView(CorrectionId id, SegmentId segment, PerformanceId performance, @Nullable SeatId seat,
		@Nullable ProtestId protest, @Nullable CardMarks old, @Nullable CardMarks corrected,
		@Nullable PointsChange change, @Nullable SheetChange sheet, @Nullable StatusChange status, String reason,
		CorrectionState state, String proposedBy, Instant proposedAt, String decidedBy, @Nullable Instant decidedAt,
		String decisionReason, int version) {

	/** What it was proposed on, in words. */
	public String oldWords() {
		if (this.status != null) {
			return this.status.old().inWords();
		}
		if (this.sheet != null) {
			return this.sheet.line().words(this.sheet.old());
		}
		return (this.change != null) ? this.change.line().words(this.change.old())
				: MarkWords.of(Objects.requireNonNull(this.old));
	}

	/** What shall count, in words. */
	public String correctedWords() {
		if (this.status != null) {
			return this.status.corrected().inWords();
		}
		if (this.sheet != null) {
			return this.sheet.line().words(this.sheet.corrected());
		}
		return (this.change != null) ? this.change.line().words(this.change.corrected())
				: MarkWords.of(Objects.requireNonNull(this.corrected));
	}

	/** Which line of the card it changes, in words; empty where it changes both marks. */
	public String lineWords() {
		if (this.status != null) {
			return "how the team came through";
		}
		if (this.sheet != null) {
			return this.sheet.line().words();
		}
		return (this.change != null) ? this.change.line().words() : "";
	}

}
