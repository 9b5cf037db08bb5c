package rimebook.panels;

import java.util.List;

import rimebook.wording.Sentence;

/**
 * Somebody sits in judgement on a team they are bound to, by override or because the team
 * or the bond became known later.
 *
 * @param official the name of who sits there
 * @param grounds what binds them, each with its team: "own club, Lanterns"
 * @param unsettled those that nobody has set aside with a reason
 */
public record SeatConflict(SeatId seat, SeatPlace place, String official, List<Sentence> grounds,
		List<Sentence> unsettled) {

	public SeatConflict {
		grounds = List.copyOf(grounds);
		unsettled = List.copyOf(unsettled);
	}

	/** Tell whether somebody has still to look at it. */
	public boolean isUnsettled() {
		return !this.unsettled.isEmpty();
	}

}
