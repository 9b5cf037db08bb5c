/**
 * Who may come in: people with a name, a password and roles, the one-time link that makes
 * the first administrator, and the seat codes that judges' tablets join with.
 */
@ApplicationModule(allowedDependencies = { "shared", "pages", "wording" })
@NullMarked
package rimebook.accounts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
