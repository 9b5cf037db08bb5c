package rimebook.panels;

import java.util.List;

/**
 * Somebody sits in judgement on a team they are bound to, by override or because the team
 * or the bond became known later.
 *
 * @param grounds what binds them, each with its team: "own club, Lanterns"
 */
public record SeatConflict(SeatId seat, List<String> grounds) {

	public SeatConflict {
		grounds = List.copyOf(grounds);
	}

}
