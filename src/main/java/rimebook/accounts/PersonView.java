package rimebook.accounts;

import java.util.Set;

/**
 * A person who may sign in, as others see them.
 *
 * @param id the identity
 * @param signInName what they type to sign in, in small letters
 * @param displayName the name on pages and on the record, unlike everybody else's
 * @param roles what they may do
 * @param active whether they may sign in at all
 * @param version given back with a change
 */
public record PersonView(PersonId id, String signInName, String displayName, Set<Role> roles, boolean active,
		int version) {
}
