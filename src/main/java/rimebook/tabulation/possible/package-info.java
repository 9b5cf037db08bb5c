/**
 * What can still happen in a segment under placement judging: the best and the worst
 * place that every team can reach while teams are still to skate, and which place in the
 * segment a team needs for a place in the event. A figure that is proved and was reached
 * is exact; one that is only proved is marked as a bound.
 */
@NamedInterface("possible")
@NullMarked
package rimebook.tabulation.possible;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
