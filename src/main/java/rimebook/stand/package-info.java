/**
 * The referee’s look at a segment, and what the desks share of it: order, ice, panel, the
 * segments that run now.
 */
@ApplicationModule(allowedDependencies = { "commentary", "live", "timetable", "timetable :: plan", "clock", "points",
		"paper", "performances", "remarks", "arrival", "music", "panels", "draw", "rulings", "entries", "competition",
		"tabulation", "tabulation :: points", "pages", "shared", "wording" })
@NullMarked
package rimebook.stand;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
