/**
 * Protests inside their time limits and corrections with two names: a wrong sum or a
 * mistyped mark is put right, a judge's opinion is not.
 */
@ApplicationModule(allowedDependencies = { "accounts", "results", "performances", "placement", "points", "panels",
		"entries", "competition", "tabulation", "tabulation :: points", "pages", "shared", "wording" })
@NullMarked
package rimebook.protests;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
