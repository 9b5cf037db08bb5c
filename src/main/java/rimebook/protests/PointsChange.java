package rimebook.protests;

import rimebook.points.PointsLine;

/**
 * What a correction changes in points judging.
 *
 * @param line the line of the card
 * @param old the grade, or the mark in hundredths, that it was proposed on
 * @param corrected what shall count
 */
public record PointsChange(PointsLine line, int old, int corrected) {
}
