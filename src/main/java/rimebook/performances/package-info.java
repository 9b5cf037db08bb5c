/**
 * The life of a performance: called on the ice, marked card by card, closed by the
 * referee, ended, skated again. Knows whose cards count and what the panel was told, and
 * declares what a way of judging, the clock and paper have to answer; which of them there
 * are it does not know.
 */
@ApplicationModule(allowedDependencies = { "panels", "draw", "entries", "competition", "tabulation",
		"tabulation :: points", "shared", "wording" })
@NullMarked
package rimebook.performances;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
