package rimebook.pages;

import java.util.Set;

/**
 * Something that waits for somebody at the desk now.
 *
 * @param order how soon it is wanted, small numbers first
 * @param key the message that says it; {0} stands for the count
 * @param count how many of them wait; 0 where there is nothing to count
 * @param where what it is about, such as "Junior, Free skating"
 * @param competition the name of the competition, empty where it is all the same
 * @param path where it is done, with its query if need be
 * @param roles the names of the roles whose it is, empty for everybody who may change
 * something at that path
 */
public record Waiting(int order, String key, int count, String where, String competition, String path,
		Set<String> roles) {

	public Waiting {
		roles = Set.copyOf(roles);
	}

	public Waiting(int order, String key, int count, String where, String competition, String path) {
		this(order, key, count, where, competition, path, Set.of());
	}

	/** The same for these roles alone. */
	public Waiting only(String... roles) {
		return new Waiting(this.order, this.key, this.count, this.where, this.competition, this.path, Set.of(roles));
	}

}
