/**
 * Clubs, their teams, and the entry of a team into an event: one at a time by hand, or
 * many from a file that is looked over before anything is written.
 */
@ApplicationModule(allowedDependencies = { "competition", "pages", "shared", "tables", "wording" })
@NullMarked
package rimebook.entries;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
