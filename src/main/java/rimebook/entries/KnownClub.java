package rimebook.entries;

import java.util.List;

/**
 * A club as it is written down, to be mended.
 *
 * @param version give it back with a change, so that nobody overwrites another's
 * @param teams the names of its teams
 */
public record KnownClub(ClubView club, int version, List<String> teams) {

	public KnownClub {
		teams = List.copyOf(teams);
	}

}
