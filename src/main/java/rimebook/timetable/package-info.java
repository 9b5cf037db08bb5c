/**
 * The plan of the days and the running estimate: what happens when on which ice, worked
 * out from what the competition has, published in numbered versions, and, once teams are
 * called, when each team still to come is expected. Hears the ice and knows no marks.
 */
@ApplicationModule(allowedDependencies = { "performances", "draw", "panels", "entries", "competition", "letters",
		"pages", "shared", "wording" })
@NullMarked
package rimebook.timetable;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
