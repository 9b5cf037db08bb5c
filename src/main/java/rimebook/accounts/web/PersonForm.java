package rimebook.accounts.web;

import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import jakarta.validation.constraints.NotBlank;
import org.jspecify.annotations.Nullable;

import rimebook.accounts.DraftPerson;
import rimebook.accounts.PersonView;
import rimebook.accounts.Role;

/** What is typed about a person. The password is never sent back to the page. */
record PersonForm(@NotBlank(message = "{accounts.person.sign-in-name.missing}") String signInName,
		@NotBlank(message = "{accounts.person.display-name.missing}") String displayName, @Nullable Set<Role> roles,
		@NotBlank(message = "{accounts.person.password.missing}") String password, @Nullable Integer version) {

	@Override
	public Integer version() {
		return (this.version != null) ? this.version : 0;
	}

	@Override
	public Set<Role> roles() {
		return (this.roles != null) ? this.roles.stream().filter(Objects::nonNull).collect(Collectors.toSet())
				: Set.of();
	}

	static PersonForm empty() {
		return new PersonForm("", "", Set.of(), "", 0);
	}

	static PersonForm of(PersonView person) {
		return new PersonForm(person.signInName(), person.displayName(), person.roles(), "", person.version());
	}

	DraftPerson draft() {
		return new DraftPerson(this.signInName, this.displayName, roles(), this.password);
	}

	@Override
	public String toString() {
		return "PersonForm[" + this.signInName + "]";
	}

}
