package rimebook.protests;

import rimebook.points.SheetLine;

/**
 * What a correction changes in the called elements or the deductions.
 *
 * @param line the place
 * @param old what it was proposed on, as in {@link SheetLine}
 * @param corrected what shall count
 */
public record SheetChange(SheetLine line, String old, String corrected) {
}
