package rimebook.panels;

import java.util.List;

/**
 * Somebody sits in judgement on their own club, by override or because the team came
 * later than they did.
 *
 * @param teams the names of the teams of that club in the event
 */
public record SeatConflict(SeatId seat, List<String> teams) {

	public SeatConflict {
		teams = List.copyOf(teams);
	}

}
