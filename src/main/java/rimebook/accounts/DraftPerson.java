package rimebook.accounts;

import java.util.Set;

import rimebook.shared.Required;
import rimebook.shared.RuleViolationException;

/**
 * A person to be given the right to sign in, checked part by part.
 *
 * @param signInName 2 to 60 letters, digits or the signs . - _ @; kept in small letters
 * @param displayName the name on pages and on the record, at most 120 characters
 * @param roles what they may do; never {@link Role#JUDGE}
 * @param password 12 to 64 characters of any kind, unlike the names
 */
public record DraftPerson(String signInName, String displayName, Set<Role> roles, String password) {

	/** The longest display name. */
	static final int DISPLAY_NAME_LENGTH = 120;

	/**
	 * Check every part.
	 * @throws RuleViolationException naming the field at fault
	 */
	public DraftPerson {
		signInName = SignInName.of(signInName);
		displayName = Required.text("displayName", displayName, DISPLAY_NAME_LENGTH);
		roles = personRoles(roles);
		password = PasswordRule.check(password, signInName, displayName);
	}

	static Set<Role> personRoles(Set<Role> roles) {
		if (roles.contains(Role.JUDGE)) {
			throw new RuleViolationException("judge-is-a-seat", "roles",
					"A judge signs in with the code of a seat; this role is not given to a person.");
		}
		return Set.copyOf(roles);
	}

	@Override
	public String toString() {
		return "DraftPerson[" + this.signInName + ", " + this.displayName + ", " + this.roles + "]";
	}

}
