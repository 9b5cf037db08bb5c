/**
 * Who sits where: officials, the seats of an event's panel, the rule that nobody marks a
 * team they are bound to, and the codes with which judges' tablets take their seats.
 */
@ApplicationModule(
		allowedDependencies = { "accounts", "entries", "competition", "pages", "shared", "tables", "wording" })
@NullMarked
package rimebook.panels;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
