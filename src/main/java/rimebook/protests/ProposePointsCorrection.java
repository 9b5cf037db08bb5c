package rimebook.protests;

import org.jspecify.annotations.Nullable;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.points.PointsLine;

/**
 * What one official asks another to approve in points judging: one grade or one mark.
 *
 * @param line which line of the seat's card
 * @param corrected the grade, or the mark in hundredths, that the judge gave
 * @param reason what went wrong, and who says so
 */
public record ProposePointsCorrection(PerformanceId performance, SeatId seat, PointsLine line, int corrected,
		String reason, @Nullable ProtestId protest) {
}
