/**
 * The competition itself: its facts and its life, its events with the rule set each is
 * judged by, and their segments. Everything else hangs on these identities; other modules
 * refuse a change or a move through the guards declared here.
 */
@ApplicationModule(allowedDependencies = { "tabulation", "tabulation :: points", "pages", "shared", "wording" })
@NullMarked
package rimebook.competition;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
