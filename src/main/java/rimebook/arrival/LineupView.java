package rimebook.arrival;

import java.util.List;

import rimebook.competition.SegmentId;
import rimebook.rosters.KeptRoster;

/**
 * Who was on the ice for a team in a segment.
 *
 * @param number how often it was kept, from 1; give it back with a change, so that nobody
 * overwrites another's
 * @param people by their places on the roster
 * @param reason why it was kept otherwise than when the team was called; empty where it
 * was not
 * @param kept by whom and when
 */
public record LineupView(SegmentId segment, int number, List<Person> people, String reason, CheckIn.Seen kept) {

	public LineupView {
		people = List.copyOf(people);
	}

	/**
	 * Somebody who was on the ice.
	 *
	 * @param name as it is known today; empty once it was deleted
	 */
	public record Person(KeptRoster.Place place, String name) {
	}

}
