/**
 * The plan of a competition's days, pure: blocks in an order on the ice, the times that
 * follow from them, what speaks against a plan, how two published plans differ, and when
 * each team is expected as the day goes on. Knows no database, no clock and no marks; who
 * asks brings the time.
 */
@NamedInterface("plan")
@NullMarked
package rimebook.timetable.plan;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
