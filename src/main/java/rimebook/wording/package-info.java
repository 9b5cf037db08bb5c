/**
 * Sentences for people as data: a key with arguments inside the house, words in a
 * language at its edge. Stands below every other module and knows none of them.
 */
@ApplicationModule(type = ApplicationModule.Type.OPEN, allowedDependencies = {})
@NullMarked
package rimebook.wording;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
