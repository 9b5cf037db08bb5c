/**
 * Draws starting orders so that nobody can call them unfair: every entry's ticket is a
 * digest of a published seed and its name, the order of the tickets is the order of the
 * start, and anyone can repeat it. A drawn order is never edited; a re-draw is a further
 * order with its reason, and a withdrawal leaves its gap.
 */
@ApplicationModule(allowedDependencies = { "entries", "competition", "pages", "shared", "wording" })
@NullMarked
package rimebook.draw;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
