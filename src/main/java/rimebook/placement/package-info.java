/**
 * Cards of two marks. A card is acknowledged only after its row is committed, the same
 * card sent twice is one row, and a correction adds a version and never overwrites.
 */
@ApplicationModule(allowedDependencies = { "performances", "paper", "panels", "entries", "competition", "tabulation",
		"shared", "wording" })
@NullMarked
package rimebook.placement;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
