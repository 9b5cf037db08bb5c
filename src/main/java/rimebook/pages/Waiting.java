package rimebook.pages;

import java.util.Set;

/**
 * Something that waits for somebody at the desk now.
 *
 * @param order how soon it is wanted, small numbers first
 * @param key the message that says it; {0} stands for the count
 * @param count how many of them wait; 0 where there is nothing to count
 * @param place where it waits
 * @param path where it is done, with its query if need be
 * @param roles the names of the roles whose it is, empty for everybody who may change
 * something at that path
 */
public record Waiting(int order, String key, int count, Place place, String path, Set<String> roles) {

	public Waiting {
		roles = Set.copyOf(roles);
	}

	/** One for everybody who may change something at its path. */
	public Waiting(int order, String key, int count, Place place, String path) {
		this(order, key, count, place, path, Set.of());
	}

	/** The same for these roles alone. */
	public Waiting only(String... roles) {
		return new Waiting(this.order, this.key, this.count, this.place, this.path, Set.of(roles));
	}

	/**
	 * Where something waits.
	 *
	 * @param where what it is about, such as "Junior, Free skating"
	 * @param competition the name of the competition, empty where it is all the same
	 */
	public record Place(String where, String competition) {
	}

}
