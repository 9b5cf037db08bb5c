package rimebook.accounts;

import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.RuleViolationException;

/**
 * Asks a person who is signed in for their password once more, before an act that is
 * theirs alone. How often it may be guessed at is limited at the door.
 */
@Service
public class OwnPassword {

	private final PersonRepository people;

	private final PasswordEncoder passwords;

	OwnPassword(PersonRepository people, PasswordEncoder passwords) {
		this.people = people;
		this.passwords = passwords;
	}

	/**
	 * Refuse unless that is the person's password.
	 * @throws RuleViolationException {@code password-wrong} on the field {@code password}
	 */
	@Transactional(readOnly = true)
	public void require(Authentication person, String typed) {
		boolean right = person.getPrincipal() instanceof SignedIn signedIn
				&& this.people.findById(signedIn.person().value())
					.filter((one) -> this.passwords.matches(typed, one.passwordHash()))
					.isPresent();
		if (!right) {
			throw new RuleViolationException("password-wrong", "password",
					"That is not your password. Nothing is signed yet; type the one you sign in with.");
		}
	}

}
