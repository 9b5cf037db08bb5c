/**
 * The house's front: who may open which path, the layout, the error pages and problem
 * answers, the locale, and what controllers of all modules are given (actor, seat,
 * device).
 */
@ApplicationModule(allowedDependencies = { "accounts", "tabulation", "pages", "shared", "wording" })
@NullMarked
package rimebook.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
