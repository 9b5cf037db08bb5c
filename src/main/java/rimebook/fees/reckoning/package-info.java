/**
 * What a team owes: a pure function of the fees that were set and of what became of its
 * entry. Knows no database and no clock.
 */
@NamedInterface("reckoning")
@NullMarked
package rimebook.fees.reckoning;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
