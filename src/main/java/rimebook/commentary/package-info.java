/**
 * For people who talk while teams skate: the commentator's page, behind a personal link,
 * and what the announcer reads aloud. Says what the public is told ({@code live}), what
 * the referee released, and what was written down for this; marks and cards are out of
 * its reach.
 */
@ApplicationModule(allowedDependencies = { "live", "results", "published", "rulings", "accounts", "music", "entries",
		"competition", "tabulation", "pages", "shared", "wording" })
@NullMarked
package rimebook.commentary;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
