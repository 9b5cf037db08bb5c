/**
 * The door of a team's managers: behind the link of their team they do their own part and
 * see what is missing until when. Composes what other rooms know and has no rules of its
 * own; which team it is about is said by the link alone, never by an address or a form.
 */
@ApplicationModule(allowedDependencies = { "accounts", "rosters", "rosters :: eligibility", "music", "rulings",
		"protests", "results", "live", "letters", "entries", "competition", "tabulation", "tabulation :: points",
		"pages", "shared", "wording" })
@NullMarked
package rimebook.managers;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
