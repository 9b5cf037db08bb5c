/**
 * The life of a performance: called on the ice, marked card by card, closed by the
 * referee. A card is acknowledged only after its row is committed, the same card sent
 * twice is one row, and a correction adds a version and never overwrites.
 */
@ApplicationModule(allowedDependencies = { "panels", "draw", "rulings", "entries", "competition", "tabulation",
		"tabulation :: points", "pages", "shared" })
@NullMarked
package rimebook.marks;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
