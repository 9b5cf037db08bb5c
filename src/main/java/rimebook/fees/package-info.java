/**
 * What teams are charged, what their clubs have paid, and what is still open: amounts of
 * clubs and teams, and nothing of any person. Knows nothing of the ice, and of rosters
 * only how many skate.
 */
@ApplicationModule(allowedDependencies = { "entries", "competition", "pages", "shared", "wording" })
@NullMarked
package rimebook.fees;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
