/**
 * Points judging: element grades and component marks become scores, scores become places,
 * and every step can be shown. Figures are whole hundredths ({@code 6513 = 65.13});
 * quotients and products are exact decimals, rounded to two places with halves away from
 * zero as soon as each is made, never floating point. What rulebooks differ in stands in
 * {@link rimebook.tabulation.points.PointsRules}, which is read from tables and says of
 * each item where it comes from. A mark that a judge did not give is absent, never zero.
 */
@NamedInterface("points")
@NullMarked
package rimebook.tabulation.points;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
