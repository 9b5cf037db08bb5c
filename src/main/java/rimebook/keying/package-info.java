/**
 * The keying desk: cards, called elements and deductions from paper, and blank cards for
 * the day on which the tablets or the network are gone. Controllers beside what they
 * show.
 */
@ApplicationModule(allowedDependencies = { "stand", "paper", "points", "performances", "panels", "draw", "entries",
		"competition", "tabulation :: points", "pages", "shared", "wording" })
@NullMarked
package rimebook.keying;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
