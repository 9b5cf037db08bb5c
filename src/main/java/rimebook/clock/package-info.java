/**
 * The referee’s clock of the performance on the ice: every touch a row that is never
 * changed, and what was found from them.
 */
@ApplicationModule(allowedDependencies = { "performances", "competition", "shared", "wording" })
@NullMarked
package rimebook.clock;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
