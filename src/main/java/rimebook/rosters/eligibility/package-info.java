/**
 * Whether a team keeps to the rules of an event about its people: a pure function of the
 * rules, the roster and the other rosters of the competition.
 */
@NamedInterface("eligibility")
@NullMarked
package rimebook.rosters.eligibility;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
