package rimebook.accounts;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Version;
import org.jspecify.annotations.Nullable;

import rimebook.shared.ConflictException;
import rimebook.wording.Sentence;

/** A person who may sign in. */
@Entity
class Person {

	@Id
	private UUID id;

	@Version
	private @Nullable Integer version;

	private String signInName;

	private String displayName;

	private String passwordHash;

	private boolean passwordTemporary;

	private boolean active;

	private Instant createdAt;

	@ElementCollection(fetch = FetchType.EAGER)
	@CollectionTable(name = "person_role", joinColumns = @JoinColumn(name = "person_id"))
	@Column(name = "role")
	@Enumerated(EnumType.STRING)
	private Set<Role> roles = new HashSet<>();

	/** For Hibernate. */
	// Hibernate fills the fields.
	@SuppressWarnings("NullAway.Init")
	protected Person() {
	}

	Person(PersonView.Id id, DraftPerson draft, Instant now) {
		this.id = id.value();
		this.signInName = draft.signInName();
		this.displayName = draft.displayName();
		this.passwordHash = "";
		this.active = true;
		this.createdAt = now;
		this.roles.addAll(draft.roles());
	}

	/** Refuse a change that was made up from an older version than this. */
	void requireVersion(int expected) {
		ConflictException.requireSeen("person", expected, version());
	}

	void change(String displayName, Set<Role> roles) {
		this.displayName = displayName;
		this.roles.retainAll(roles);
		this.roles.addAll(roles);
	}

	/**
	 * Sign in with that from now on.
	 * @param temporary whether somebody else chose it, so that it has to be replaced
	 */
	void usePassword(String hash, boolean temporary) {
		this.passwordHash = hash;
		this.passwordTemporary = temporary;
	}

	boolean hasTemporaryPassword() {
		return this.passwordTemporary;
	}

	void deactivate() {
		if (!this.active) {
			throw new ConflictException("person-not-active",
					Sentence.of("accounts.person-not-active", this.displayName));
		}
		this.active = false;
	}

	void reactivate() {
		if (this.active) {
			throw new ConflictException("person-active", Sentence.of("accounts.person-active", this.displayName));
		}
		this.active = true;
	}

	boolean isAdministrator() {
		return this.active && this.roles.contains(Role.ADMINISTRATOR);
	}

	PersonView.Id id() {
		return new PersonView.Id(this.id);
	}

	String passwordHash() {
		return this.passwordHash;
	}

	PersonView view() {
		Set<Role> held = EnumSet.noneOf(Role.class);
		held.addAll(this.roles);
		return new PersonView(id(), this.signInName, this.displayName, Collections.unmodifiableSet(held), this.active,
				version());
	}

	private int version() {
		return (this.version != null) ? this.version : 0;
	}

}
