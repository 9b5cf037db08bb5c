/**
 * What the referee tells the panel of a performance, and which seat has seen it.
 */
@ApplicationModule(allowedDependencies = { "performances", "clock", "panels", "competition", "shared", "wording" })
@NullMarked
package rimebook.remarks;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
