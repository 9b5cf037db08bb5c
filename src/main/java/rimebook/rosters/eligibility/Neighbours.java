package rimebook.rosters.eligibility;

import java.util.List;

/**
 * The other teams that a team is compared with.
 *
 * @param sameEvent the others of its event
 * @param clubBefore those of its club that come before it in the competition
 */
public record Neighbours(List<Team> sameEvent, List<Team> clubBefore) {

	/** There is no other team. */
	public static final Neighbours NONE = new Neighbours(List.of(), List.of());

	public Neighbours {
		sameEvent = List.copyOf(sameEvent);
		clubBefore = List.copyOf(clubBefore);
	}

}
