/**
 * Profile {@code demo} only: fills an invented competition through the public facades and
 * lets the simulated panel of a rehearsal mark it.
 */
@ApplicationModule(allowedDependencies = { "rehearsal", "timetable", "timetable :: plan", "protests", "results",
		"stand", "performances", "placement", "points", "panels", "music", "draw", "rulings", "rosters", "fees",
		"fees :: reckoning", "letters", "managers", "entries", "competition", "accounts", "tabulation",
		"tabulation :: points", "pages", "shared", "wording" })
@NullMarked
package rimebook.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
