/**
 * Questions about a planned element, a costume, a prop or a piece of music, and the
 * referee's rulings on them: never edited, only superseded by a newer one.
 */
@ApplicationModule(allowedDependencies = { "entries", "competition", "pages", "shared", "wording" })
@NullMarked
package rimebook.rulings;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
