package rimebook.rehearsal;

import rimebook.panels.SeatView;
import rimebook.shared.Actor;

/**
 * In whose names the simulated panel acts.
 *
 * @param referee who calls teams, closes cards and gives seats
 * @param technical who calls elements and notes deductions
 */
public record PanelCast(Actor referee, Actor technical) {

	/** Who moves a competition on, where nobody did. */
	Actor secretary() {
		return new Actor("Simulated secretary", "secretary", this.referee.device());
	}

	/** A judge whose card is sent from inside, since none came from a tablet. */
	Actor judge(SeatView seat) {
		return new Actor(seat.label(), "judge", this.referee.device());
	}

}
