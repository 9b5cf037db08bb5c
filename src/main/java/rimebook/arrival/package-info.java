/**
 * The door on the day: who of each team is here, and what is still missing of its music,
 * contacts and planned elements. Puts together what others know, and keeps who was seen
 * and who was on the ice in each segment.
 */
@ApplicationModule(allowedDependencies = { "performances", "rosters", "music", "entries", "competition", "pages",
		"shared", "wording" })
@NullMarked
package rimebook.arrival;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
