/**
 * Turns closed cards into numbered, immutable versions of a standing and carries a
 * segment from provisional to official: a closed card without its standing cannot exist,
 * since both are written in one transaction.
 */
@ApplicationModule(allowedDependencies = { "published", "accounts", "performances", "panels", "draw", "entries",
		"competition", "tabulation", "tabulation :: points", "tabulation :: possible", "pages", "shared", "wording" })
@NullMarked
package rimebook.results;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
