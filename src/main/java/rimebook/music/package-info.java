/**
 * The music that teams skate to: files a segment, versions of them, how long they are,
 * where their bytes lie, and the desk from which they are played. Knows who starts in
 * which order and nothing of the ice.
 */
@ApplicationModule(allowedDependencies = { "draw", "entries", "competition", "letters", "pages", "shared", "wording" })
@NullMarked
package rimebook.music;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
