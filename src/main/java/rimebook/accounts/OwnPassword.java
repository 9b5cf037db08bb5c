package rimebook.accounts;

import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;

import rimebook.shared.Actor;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * Asks a person who is signed in for their password once more, before an act that is
 * theirs alone, and lets them replace it. How often it may be guessed at is limited at
 * the door; what did not fit stands on the record, so none of this runs in a transaction
 * that ends with the refusal.
 */
@Service
public class OwnPassword {

	private final PersonRepository people;

	private final People accounts;

	private final PasswordEncoder passwords;

	private final DoorRecord record;

	OwnPassword(PersonRepository people, People accounts, PasswordEncoder passwords, DoorRecord record) {
		this.record = record;
		this.people = people;
		this.accounts = accounts;
		this.passwords = passwords;
	}

	/**
	 * Refuse a signature unless that is the person's password.
	 * @throws RuleViolationException {@code password-wrong} on the field {@code password}
	 */
	public void require(Authentication person, String typed, Actor self) {
		if (!isRight(person, typed, "a signature", self)) {
			throw new RuleViolationException("password-wrong", "password",
					Sentence.of("accounts.password-wrong-signing"));
		}
	}

	/**
	 * Replace the password of whoever is signed in. Every session of theirs ends.
	 * @param current the one they sign in with now
	 * @param password the new one
	 * @param again the new one once more
	 * @throws RuleViolationException {@code password-wrong} on the field {@code current},
	 * {@code passwords-differ} on {@code again}, or what {@link People#setPassword}
	 * refuses
	 */
	public void change(Authentication person, String current, String password, String again, Actor self) {
		if (!(person.getPrincipal() instanceof SignedIn signedIn)
				|| !isRight(person, current, "another password", self)) {
			throw new RuleViolationException("password-wrong", "current",
					Sentence.of("accounts.password-wrong-changing"));
		}
		if (!password.equals(again)) {
			throw new RuleViolationException("passwords-differ", "again", Sentence.of("accounts.passwords-differ"));
		}
		this.accounts.choosePassword(signedIn.person(), password, self);
	}

	private boolean isRight(Authentication person, String typed, String what, Actor self) {
		if (!(person.getPrincipal() instanceof SignedIn signedIn)) {
			return false;
		}
		boolean right = this.people.findById(signedIn.person().value())
			.filter((one) -> this.passwords.matches(typed, one.passwordHash()))
			.isPresent();
		if (!right) {
			this.record.notTheirs(signedIn, what, self);
		}
		return right;
	}

}
