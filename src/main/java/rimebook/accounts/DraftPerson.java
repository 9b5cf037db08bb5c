package rimebook.accounts;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

import rimebook.shared.Name;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * A person to be given the right to sign in, checked part by part.
 *
 * @param signInName 2 to 60 letters, digits or the signs . - _ @; kept in small letters
 * @param displayName the name on pages and on the record, at most 120 characters
 * @param roles what they may do; never {@link Role#JUDGE}
 * @param password 12 to 64 characters of any kind, unlike the names
 */
public record DraftPerson(String signInName, String displayName, Set<Role> roles, String password) {

	/** Words of the record that name no person. */
	private static final Set<String> RESERVED = Set.of("rimebook", "rimebook by rule", "system", "service", "server",
			"nobody", "somebody", "unknown", "anonymous");

	/** As seats are called on the record: "Judge 3, Adult". */
	private static final Pattern SEAT = Pattern.compile("(judge|substitute) \\d+( .*)?");

	/**
	 * Check every part.
	 * @throws RuleViolationException naming the field at fault
	 */
	public DraftPerson {
		signInName = SignInName.of(signInName);
		displayName = displayName(displayName);
		roles = personRoles(roles);
		password = PasswordRule.check(password, signInName, displayName);
	}

	/**
	 * A name as it may stand on the record: never one by which the service itself, a
	 * judge's seat or nobody is meant there.
	 */
	static String displayName(@Nullable String typed) {
		String name = Name.required("displayName", typed);
		String words = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
		if (RESERVED.contains(words) || SEAT.matcher(words).matches()) {
			throw new RuleViolationException("name-reserved", "displayName",
					Sentence.of("accounts.name-reserved", name));
		}
		return name;
	}

	static Set<Role> personRoles(Set<Role> roles) {
		if (roles.contains(Role.JUDGE)) {
			throw new RuleViolationException("judge-is-a-seat", "roles", Sentence.of("accounts.judge-is-a-seat"));
		}
		return Set.copyOf(roles);
	}

	@Override
	public String toString() {
		return "DraftPerson[" + this.signInName + ", " + this.displayName + ", " + this.roles + "]";
	}

}
