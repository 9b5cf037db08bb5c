/**
 * What a judge’s tablet shows and sends: one seat’s table, its cards, and the JSON that
 * tablets speak. Another seat’s marks are never read for it.
 */
@ApplicationModule(allowedDependencies = { "audit", "placement", "points", "performances", "remarks", "panels",
		"entries", "competition", "tabulation", "shared", "wording" })
@NullMarked
package rimebook.tablets;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
