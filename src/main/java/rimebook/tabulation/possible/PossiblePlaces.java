package rimebook.tabulation.possible;

import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;

/**
 * What can still happen.
 *
 * @param teams those marked so far that keep their place, in the order of the standing,
 * then those still to skate as given
 * @param needs for each team still to skate and each place of the event, best first, what
 * it takes
 */
public record PossiblePlaces(List<Outlook> teams, List<PlaceNeed> needs) {

	public PossiblePlaces {
		teams = List.copyOf(teams);
		needs = List.copyOf(needs);
	}

	/**
	 * Find one team.
	 * @param entry identifier
	 * @return its outlook, if it is in the segment
	 */
	public Optional<Outlook> team(String entry) {
		return this.teams.stream().filter((team) -> team.entry().equals(entry)).findFirst();
	}

	/** Tell whether what a team needs is about its place in the event. */
	public boolean isOfEvent() {
		return this.teams.stream().anyMatch((team) -> team.event() != null);
	}

	/**
	 * Find what a team needs.
	 * @param entry identifier of a team still to skate
	 * @param place in the event, from 1
	 * @return the need, if there is one
	 */
	public Optional<PlaceNeed> need(String entry, int place) {
		return this.needs.stream().filter((need) -> need.entry().equals(entry) && need.place() == place).findFirst();
	}

	/**
	 * One team.
	 *
	 * @param entry identifier
	 * @param marked whether it has been marked
	 * @param segment places it can still reach in the segment
	 * @param event places it can still reach in the event; none where the event does not
	 * end with this segment or the team gets no place in it
	 */
	public record Outlook(String entry, boolean marked, PlaceRange segment, @Nullable PlaceRange event) {

	}

}
