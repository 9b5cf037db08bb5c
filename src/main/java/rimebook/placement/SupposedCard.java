package rimebook.placement;

import rimebook.panels.SeatId;
import rimebook.performances.PerformanceId;
import rimebook.performances.SupposedChange;
import rimebook.tabulation.CardMarks;

/**
 * A card of two marks that would hold others.
 *
 * @param seat which seat's card
 * @param marks what it would hold
 */
public record SupposedCard(PerformanceId performance, SeatId seat, CardMarks marks) implements SupposedChange {

}
