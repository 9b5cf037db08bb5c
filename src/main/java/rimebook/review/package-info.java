/**
 * How far the judges of a panel agree, for the referee and for nobody else: each judge's
 * marks beside those of the other judges, as they were published. Reads only; nothing is
 * kept, and no place rests on it.
 */
@ApplicationModule(allowedDependencies = { "published", "results", "performances", "panels", "competition",
		"tabulation", "pages", "shared", "wording" })
@NullMarked
package rimebook.review;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
