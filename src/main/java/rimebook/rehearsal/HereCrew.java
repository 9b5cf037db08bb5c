package rimebook.rehearsal;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.core.env.Environment;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.People;
import rimebook.accounts.PersonView;
import rimebook.accounts.Role;
import rimebook.shared.Actor;

/**
 * Lets the crew in: everybody by the name that they have at the real service, all with
 * the password of this rehearsal, and somebody for each role that nobody has. It is done
 * before the server listens.
 */
class HereCrew implements SmartInitializingSingleton {

	/** Before the role of somebody who is made up, in the name to sign in with. */
	static final String MADE_UP = "rehearsal-";

	private final People people;

	private final String password;

	HereCrew(People people, Environment environment) {
		this.people = people;
		this.password = environment.getRequiredProperty("rimebook.rehearsal.password");
	}

	@Override
	public void afterSingletonsInstantiated() {
		List<PersonView> known = this.people.all();
		known.stream().filter((person) -> !person.active()).forEach(this::letIn);
		Arrays.stream(Role.values())
			.filter((role) -> role != Role.JUDGE)
			.filter((role) -> known.stream().noneMatch((person) -> person.roles().contains(role)))
			.forEach(this::makeUp);
	}

	/** In their own name, so that they need not choose another password first. */
	private void letIn(PersonView person) {
		this.people.setPassword(person.id(), this.password,
				new Actor("person:" + person.id(), person.displayName(), "system", "rehearsal"));
		this.people.reactivate(person.id(), this.people.person(person.id()).version(), Actor.system());
	}

	private void makeUp(Role role) {
		this.people.add(
				new DraftPerson(MADE_UP + role.word(), "Rehearsing " + role.word(), Set.of(role), this.password),
				Actor.system());
	}

}
