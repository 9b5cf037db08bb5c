/**
 * What the page controllers of every module share: a refused form and the order of its
 * faults, a word of confirmation, a list to choose from, the device that a request came
 * from, an entry on the desk, a template laid out on paper. Knows no modules but
 * {@code shared} and {@code wording}.
 */
@ApplicationModule(type = ApplicationModule.Type.OPEN, allowedDependencies = { "shared", "wording" })
@NullMarked
package rimebook.pages;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
