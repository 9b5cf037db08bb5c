/**
 * Who skates in a team: people, known once in the whole house, the rosters of entries
 * with who stands by and who is to be called, and whether a roster keeps to the rules of
 * its event. Knows nothing of the ice.
 *
 * <p>
 * Nothing here lets the record say what can be said of a person later: lines name people
 * by their identity and attest what is stored by {@link rimebook.rosters.Commitment}.
 */
@ApplicationModule(allowedDependencies = { "accounts", "entries", "competition", "letters", "pages", "shared", "tables",
		"wording" })
@NullMarked
package rimebook.rosters;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
