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

	/**
	 * What a team still to skate needs in this segment for a place in the event, or a
	 * better one.
	 *
	 * @param entry identifier
	 * @param place in the event, from 1
	 * @param certain with this finish in the segment, or a better one, the place is
	 * certain whatever the others receive; exact where no worse finish makes it certain
	 * too
	 * @param possible with a worse finish than this the place cannot be reached; exact
	 * where it can really be reached with this one
	 * @param lowest the worst finish that was looked at: where it makes the place
	 * certain, the team need not fear for it
	 */
	public record PlaceNeed(String entry, int place, FinishBound certain, FinishBound possible, SegmentFinish lowest) {

		/**
		 * Return whether the place is certain whatever happens.
		 * @return true where the team need only be marked
		 */
		public boolean isSafe() {
			return this.lowest.equals(this.certain.finish());
		}

		/**
		 * Return whether the place is out of reach.
		 * @return true where no finish leads to it
		 */
		public boolean isLost() {
			return this.possible.finish() == null;
		}

		/**
		 * How a team comes out of the segment.
		 *
		 * @param place from 1
		 * @param shared whether it may be shared with other teams
		 */
		public record SegmentFinish(int place, boolean shared) {

		}

		/**
		 * The last finish of which something holds.
		 *
		 * @param finish none where it holds of no finish
		 * @param exact whether it really ends there; otherwise it may hold of fewer or
		 * more
		 */
		public record FinishBound(@Nullable SegmentFinish finish, boolean exact) {

		}

	}

	/**
	 * The places a team can still reach.
	 *
	 * @param best from 1; nothing better can be reached
	 * @param bestExact whether it can really be reached; otherwise it is a bound, and the
	 * truth may be worse
	 * @param worst nothing worse can happen
	 * @param worstExact whether it can really happen; otherwise it is a bound, and the
	 * truth may be better
	 */
	public record PlaceRange(int best, boolean bestExact, int worst, boolean worstExact) {

		/**
		 * Return whether both ends are exact.
		 * @return false where one of them is a bound
		 */
		public boolean isExact() {
			return this.bestExact && this.worstExact;
		}

		/**
		 * Return whether one place only is left.
		 * @return true where the place is certain
		 */
		public boolean isCertain() {
			return this.best == this.worst;
		}

		static PlaceRange of(int bestBound, int bestReached, int worstBound, int worstReached) {
			return new PlaceRange(bestBound, bestBound == bestReached, worstBound, worstBound == worstReached);
		}

	}

}
