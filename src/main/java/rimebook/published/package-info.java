/**
 * What a published version says: the standing with everything a reader needs to check it,
 * and its fixed form as text with its fingerprint. Knows neither database nor time.
 */
@ApplicationModule(allowedDependencies = { "performances", "panels", "competition", "tabulation", "wording" })
@NullMarked
package rimebook.published;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
