package rimebook.web;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;

import rimebook.accounts.Role;

/**
 * Who may open the paths of one pattern.
 *
 * @param pattern the path pattern
 * @param open whether everybody may, signed in or not
 * @param linked whether a team's link opens them, and nothing else
 * @param writers who may read and change
 * @param readers who may read, the writers among them
 */
record PathRule(String pattern, boolean open, boolean linked, Set<Role> writers, Set<Role> readers) {

	/** By people and seats. */
	private PathRule(String pattern, Set<Role> writers, Set<Role> readers) {
		this(pattern, false, false, writers, readers);
	}

	static PathRule everybody(String pattern) {
		return new PathRule(pattern, true, false, Set.of(), Set.of());
	}

	static PathRule seat(String pattern) {
		return new PathRule(pattern, EnumSet.of(Role.JUDGE), EnumSet.of(Role.JUDGE));
	}

	/** Whoever shows the link of a team; its own pages, whatever their address says. */
	static PathRule team(String pattern) {
		return new PathRule(pattern, false, true, Set.of(), Set.of());
	}

	static PathRule anyPerson(String pattern) {
		return people(pattern, Role.values());
	}

	/** These people, and the administrator, who may do what every other person may. */
	static PathRule people(String pattern, Role... roles) {
		Set<Role> people = EnumSet.of(Role.ADMINISTRATOR, roles);
		people.remove(Role.JUDGE);
		return new PathRule(pattern, people, people);
	}

	/**
	 * The same for these alone to change something; whoever could before may read only.
	 */
	PathRule writtenBy(Role... roles) {
		Set<Role> everyone = EnumSet.copyOf(this.readers);
		everyone.addAll(Arrays.asList(roles));
		return new PathRule(this.pattern, Set.of(roles), everyone);
	}

	/** The same rule, and these may read. */
	PathRule read(Role... more) {
		Set<Role> everyone = EnumSet.copyOf(this.readers);
		everyone.addAll(Arrays.asList(more));
		return new PathRule(this.pattern, this.writers, everyone);
	}

	/** Tell whether somebody with these roles may read. */
	boolean isReadBy(Set<Role> held) {
		return this.open || held.stream().anyMatch(this.readers::contains);
	}

	/** Tell whether somebody with these roles may read and change nothing. */
	boolean isReadOnlyFor(Set<Role> held) {
		return !this.open && isReadBy(held) && held.stream().noneMatch(this.writers::contains);
	}

}
