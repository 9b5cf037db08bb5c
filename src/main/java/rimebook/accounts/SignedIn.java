package rimebook.accounts;

import java.util.Collection;

import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.userdetails.User;

/** A person who signed in with name and password. */
public final class SignedIn extends User {

	private static final long serialVersionUID = 1L;

	private final PersonView.Id person;

	private final String displayName;

	private final boolean passwordTemporary;

	SignedIn(PersonView person, String passwordHash, boolean passwordTemporary,
			Collection<? extends GrantedAuthority> roles) {
		super(person.signInName(), passwordHash, person.active(), true, true, true, roles);
		this.person = person.id();
		this.displayName = person.displayName();
		this.passwordTemporary = passwordTemporary;
	}

	/** Who it is. */
	public PersonView.Id person() {
		return this.person;
	}

	/** Whether they have to choose a password of their own before anything else. */
	public boolean mustChoosePassword() {
		return this.passwordTemporary;
	}

	/** The name on pages and on the record. */
	public String displayName() {
		return this.displayName;
	}

}
