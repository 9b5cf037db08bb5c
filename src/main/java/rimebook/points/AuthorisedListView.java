package rimebook.points;

import java.time.Instant;

/**
 * Who authorised a version of the called elements.
 *
 * @param sequence the version of the list
 * @param controller the technical controller
 * @param confirmedBy who said so: the controller at the desk, or who saw the signature
 * @param onPaper whether the controller signed on paper
 * @param receivedAt when, UTC
 * @param deductionsSeen the newest version of the deductions that a controller has seen
 */
public record AuthorisedListView(int sequence, String controller, String confirmedBy, boolean onPaper,
		Instant receivedAt, int deductionsSeen) {

	/** Write as on the record: "A. Name", "A. Name on paper, seen by B. Name". */
	String inWords() {
		return this.onPaper ? this.controller + " on paper, seen by " + this.confirmedBy : this.controller;
	}

}
