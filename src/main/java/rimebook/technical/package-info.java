/**
 * The technical desk: elements called, reviewed and authorised while a team skates.
 * Controllers beside what they show.
 */
@ApplicationModule(allowedDependencies = { "stand", "points", "performances", "rulings", "entries", "competition",
		"tabulation :: points", "pages", "shared", "wording" })
@NullMarked
package rimebook.technical;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
