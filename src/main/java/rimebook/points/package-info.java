/**
 * Points judging: called elements and the controller’s word for them, grades and
 * components, deductions. Every list and card is a version; a correction adds one and
 * never overwrites.
 */
@ApplicationModule(allowedDependencies = { "performances", "clock", "paper", "panels", "entries", "competition",
		"tabulation", "tabulation :: points", "shared", "wording" })
@NullMarked
package rimebook.points;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
