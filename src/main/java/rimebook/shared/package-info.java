/**
 * What every module may speak of: who acts, what goes on the record, the three ways a
 * request can fail, and where identities come from. Beyond {@code java.*} it knows
 * {@code wording} only: a refusal is worded like everything else that people read, late
 * and in their language.
 */
@ApplicationModule(type = ApplicationModule.Type.OPEN, allowedDependencies = "wording")
@NullMarked
package rimebook.shared;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
