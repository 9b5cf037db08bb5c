/**
 * Turns marks into places. Pure functions of a rule set and the closed cards: no clock,
 * no database, no randomness, no floating point, and the same answer in whatever order
 * the cards arrive. Marks, ordinals, factors and totals are whole hundredths
 * ({@code 560 = 5.60}); {@link rimebook.tabulation.Hundredths} writes them.
 */
@ApplicationModule(allowedDependencies = "wording")
@NullMarked
package rimebook.tabulation;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
