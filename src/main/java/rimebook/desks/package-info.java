/**
 * Where people work while a segment runs: the referee’s stand, the technical desk, the
 * keying desk, the tablets. The only place that sees panels, rulings, draw and every way
 * of judging together.
 */
@ApplicationModule(allowedDependencies = { "performances", "clock", "paper", "placement", "points", "panels", "draw",
		"rulings", "entries", "competition", "tabulation", "tabulation :: points", "pages", "shared" })
@NullMarked
package rimebook.desks;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
