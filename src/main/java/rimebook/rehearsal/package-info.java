/**
 * A rehearsal on one's own competition: a service of its own beside the real one, on a
 * copy, marked by a panel whose tablets are simulated and speak the same HTTP as real
 * ones.
 *
 * <p>
 * <b>The real service</b> copies the competition by its archive into a private folder,
 * starts this program once more with the profile {@code rehearsal}, and deletes the
 * folder afterwards. It only reads its own database, but for the two lines of the record
 * that say so. The process ends with its starter: it reads an input that nobody writes,
 * and which is closed when the starter is gone, however that ended. What a killed starter
 * and a killed process left behind is found by the note in the folder at the next start.
 *
 * <p>
 * <b>The rehearsal</b> restores the copy, lets the crew in with one password that only
 * whoever began it is shown, and marks all it gives away ({@code RehearsalMark}). Its
 * cookies have names of their own ({@code OwnCookies}), since browsers share cookies
 * between ports.
 */
@ApplicationModule(allowedDependencies = { "archive", "stand", "performances", "placement", "points", "panels", "draw",
		"entries", "competition", "accounts", "tabulation", "tabulation :: points", "pages", "shared", "wording" })
@NullMarked
package rimebook.rehearsal;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
