package rimebook.accounts;

import java.util.List;

import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds the person who wants to sign in. */
@Service
class PersonAccounts implements UserDetailsService {

	private final PersonRepository people;

	PersonAccounts(PersonRepository people) {
		this.people = people;
	}

	@Override
	@Transactional(readOnly = true)
	public UserDetails loadUserByUsername(String typed) {
		String name = SignInName.typed(typed);
		return this.people.findBySignInName(name)
			.map(PersonAccounts::signedIn)
			.orElseThrow(() -> new UsernameNotFoundException("Nobody signs in with this name"));
	}

	private static SignedIn signedIn(Person person) {
		PersonView view = person.view();
		List<SimpleGrantedAuthority> roles = view.roles()
			.stream()
			.map((role) -> new SimpleGrantedAuthority(role.authority()))
			.toList();
		return new SignedIn(view, person.passwordHash(), person.hasTemporaryPassword(), roles);
	}

}
