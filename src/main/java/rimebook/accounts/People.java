package rimebook.accounts;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

import rimebook.shared.Actor;
import rimebook.shared.Acts;
import rimebook.shared.AuditedChange;
import rimebook.shared.ConflictException;
import rimebook.shared.Name;
import rimebook.shared.NotFoundException;
import rimebook.shared.RuleViolationException;
import rimebook.wording.Sentence;

/**
 * The people who sign in with name and password, and what each may do. Whoever is
 * changed, shut out or given a new password has to sign in again. There is always at
 * least one active administrator.
 */
@Service
public class People {

	private final PersonRepository people;

	private final PasswordEncoder passwords;

	private final FormerPasswords former;

	private final Acts acts;

	People(PersonRepository people, PasswordEncoder passwords, FormerPasswords former, Acts acts) {
		this.acts = acts;
		this.former = former;
		this.people = people;
		this.passwords = passwords;
	}

	/** Everybody, by name, those shut out among them. */
	@Transactional(readOnly = true)
	public List<PersonView> all() {
		return this.people.findAllByOrderByDisplayName().stream().map(Person::view).toList();
	}

	/**
	 * One person.
	 * @throws NotFoundException {@code person-not-found}
	 */
	@Transactional(readOnly = true)
	public PersonView person(PersonView.Id id) {
		return find(id).view();
	}

	/**
	 * Who goes by that name now, as {@link Actor#id()} says it; empty for nobody who has
	 * an account.
	 */
	@Transactional(readOnly = true)
	public String identityOf(String displayName) {
		return this.people.findAllByOrderByDisplayName()
			.stream()
			.map(Person::view)
			.filter((person) -> Name.compared(person.displayName()).equals(Name.compared(displayName)))
			.map((person) -> identity(person.id()))
			.findFirst()
			.orElse("");
	}

	private static String identity(PersonView.Id id) {
		return "person:" + id.value();
	}

	/**
	 * Let somebody sign in from now on, with a password that the actor chose and that
	 * they have to replace by one of their own first.
	 * @throws ConflictException {@code sign-in-name-taken} or {@code display-name-taken}
	 */
	@Transactional
	public PersonView invite(DraftPerson draft, Actor actor) {
		return add(draft, true, actor);
	}

	/**
	 * Let somebody sign in from now on, with a password of their own.
	 * @throws ConflictException {@code sign-in-name-taken} or {@code display-name-taken}
	 */
	@Transactional
	public PersonView add(DraftPerson draft, Actor actor) {
		return add(draft, false, actor);
	}

	private PersonView add(DraftPerson draft, boolean temporary, Actor actor) {
		if (this.people.existsBySignInName(draft.signInName())) {
			throw new ConflictException("sign-in-name-taken", "signInName",
					Sentence.of("accounts.sign-in-name-taken", draft.signInName()));
		}
		PersonView.Id id = new PersonView.Id(this.acts.nextId());
		refuseTaken(draft.displayName(), id);
		Person person = new Person(id, draft, this.acts.now());
		person.usePassword(this.passwords.encode(draft.password()), temporary);
		this.people.saveAndFlush(person);
		this.acts.publish(change(actor, id, "person.added").to(words(person.view())));
		return person.view();
	}

	/**
	 * Change somebody's name on the record and their roles.
	 * @throws ConflictException {@code stale-version}, {@code display-name-taken} or
	 * {@code last-administrator}
	 * @throws RuleViolationException {@code field-missing}, {@code judge-is-a-seat}
	 */
	@Transactional
	public PersonView change(PersonView.Id id, int version, String displayName, Set<Role> roles, Actor actor) {
		String name = DraftPerson.displayName(displayName);
		Set<Role> held = DraftPerson.personRoles(roles);
		Person person = locked(id, version);
		refuseTaken(name, id);
		PersonView before = person.view();
		person.change(name, held);
		return changed(person, before, "person.changed", actor);
	}

	/**
	 * Give somebody a new password. Unless it is the actor's own account, they have to
	 * replace it by one of their own when they sign in.
	 * @throws RuleViolationException {@code password-too-short} and the like, or
	 * {@code password-repeated}
	 */
	@Transactional
	public void setPassword(PersonView.Id id, String password, Actor actor) {
		boolean own = actor.hasId(identity(id));
		usePassword(id, password, !own);
		this.acts.publish(change(actor, id, "person.password-set").to("a new password for " + words(find(id).view())));
	}

	/**
	 * Replace one's own password; whoever does so has to sign in again everywhere.
	 * @throws RuleViolationException as {@link #setPassword}, {@code password-repeated}
	 * also for one of the last five of their own
	 */
	@Transactional
	void choosePassword(PersonView.Id id, String password, Actor self) {
		usePassword(id, password, false);
		this.acts.publish(change(self, id, "person.password-chosen").to("a password of their own"));
	}

	private void usePassword(PersonView.Id id, String password, boolean temporary) {
		Person person = find(id);
		PersonView view = person.view();
		String checked = PasswordRule.check(password, view.signInName(), view.displayName());
		refuseRepeated(person, checked, temporary);
		if (!person.hasTemporaryPassword()) {
			this.former.keep(id, person.passwordHash());
		}
		person.usePassword(this.passwords.encode(checked), temporary);
		this.acts.publish(new PersonChanged(view.signInName()));
	}

	/**
	 * A password that has to be replaced first thing is compared with the present one.
	 */
	private void refuseRepeated(Person person, String password, boolean temporary) {
		if (this.passwords.matches(password, person.passwordHash())) {
			throw new RuleViolationException("password-repeated", "password", Sentence.of("accounts.password-in-use"));
		}
		if (!temporary && this.former.include(person.id(), password)) {
			throw new RuleViolationException("password-repeated", "password",
					Sentence.of("accounts.password-repeated", FormerPasswords.KEPT));
		}
	}

	/**
	 * Shut somebody out. What they did stays on the record.
	 * @throws ConflictException {@code stale-version}, {@code last-administrator},
	 * {@code own-account} or {@code person-not-active}
	 */
	@Transactional
	public PersonView deactivate(PersonView.Id id, int version, Actor actor) {
		Person person = locked(id, version);
		PersonView before = person.view();
		if (actor.hasId(identity(id))) {
			throw new ConflictException("own-account", Sentence.of("accounts.own-account"));
		}
		person.deactivate();
		return changed(person, before, "person.shut-out", actor);
	}

	/**
	 * Let somebody who was shut out sign in again.
	 * @throws ConflictException {@code stale-version} or {@code person-active}
	 */
	@Transactional
	public PersonView reactivate(PersonView.Id id, int version, Actor actor) {
		Person person = locked(id, version);
		PersonView before = person.view();
		person.reactivate();
		return changed(person, before, "person.let-in", actor);
	}

	private PersonView changed(Person person, PersonView before, String action, Actor actor) {
		if (isAdministrator(before) && this.people.lockActive().stream().noneMatch(Person::isAdministrator)) {
			throw new ConflictException("last-administrator", "roles", Sentence.of("accounts.last-administrator"));
		}
		this.people.flush();
		PersonView after = person.view();
		this.acts.publish(change(actor, after.id(), action).from(words(before), words(after)));
		this.acts.publish(new PersonChanged(after.signInName()));
		return after;
	}

	private static boolean isAdministrator(PersonView person) {
		return person.active() && person.roles().contains(Role.ADMINISTRATOR);
	}

	private Person locked(PersonView.Id id, int version) {
		this.people.lockActive();
		Person person = find(id);
		person.requireVersion(version);
		return person;
	}

	private Person find(PersonView.Id id) {
		return this.people.findById(id.value()).orElseThrow(() -> NotFoundException.of("person", id));
	}

	private void refuseTaken(String displayName, PersonView.Id except) {
		if (this.people.isNameTaken(displayName, except.value())) {
			throw new ConflictException("display-name-taken", "displayName",
					Sentence.of("accounts.display-name-taken", displayName));
		}
	}

	private static AuditedChange change(Actor actor, PersonView.Id id, String action) {
		return AuditedChange.of(actor, "person", id, action);
	}

	private static String words(PersonView person) {
		String roles = person.roles().stream().map(Role::word).collect(Collectors.joining(", "));
		return person.displayName() + " (" + person.signInName() + "): " + (roles.isEmpty() ? "no role" : roles)
				+ (person.active() ? "" : ", shut out");
	}

}
