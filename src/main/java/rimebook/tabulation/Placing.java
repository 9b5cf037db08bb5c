package rimebook.tabulation;

import org.jspecify.annotations.Nullable;

/**
 * Where a team stands, and what parted it from its neighbours.
 *
 * @param place from 1, or none for a team that is not placed
 * @param reason what parted the team from its neighbours
 */
public record Placing(@Nullable Integer place, Reason reason) {

	/** No place: the team's status says why. */
	public static final Placing NONE = new Placing(null, Reason.NONE);

	/**
	 * Return whether other teams have the same place.
	 * @return {@code true} on equal figures
	 */
	public boolean isShared() {
		return !this.reason.sharedWith().isEmpty();
	}

}
