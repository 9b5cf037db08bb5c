package rimebook.points;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.SupposedChange;

/**
 * A line of a card of points judging that would hold another value.
 *
 * @param seat which seat's card
 * @param line which line of it
 * @param value the grade, or the mark in hundredths
 */
public record SupposedLine(PerformanceId performance, SeatId seat, PointsLine line,
		int value) implements SupposedChange {

}
