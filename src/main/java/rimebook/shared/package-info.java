/**
 * What every module may speak of: who acts, what goes on the record, the three ways a
 * request can fail, and where identities come from. Uses {@code java.*} only.
 */
@ApplicationModule(type = ApplicationModule.Type.OPEN, allowedDependencies = {})
@NullMarked
package rimebook.shared;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
