package rimebook.points;

import rimebook.performances.PerformanceId;
import rimebook.performances.SupposedChange;

/**
 * A place of a list where another element or deduction would stand.
 *
 * @param line which place
 * @param corrected what would stand there, as in {@link SheetLine}
 */
public record SupposedPlace(PerformanceId performance, SheetLine line, String corrected) implements SupposedChange {

}
