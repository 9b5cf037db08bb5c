package rimebook.paper;

import java.time.Instant;

import rimebook.performances.CardOrigin;

/**
 * The newest card that was received of a seat, whichever way the event is judged.
 *
 * @param upToDate whether it was given to what is judged now, and not to another element,
 * or to one that was taken out since
 */
public record HeldCard(KeyedCard marks, int sequence, CardOrigin origin, Instant receivedAt, boolean upToDate) {

	boolean isFromTablet() {
		return this.origin == CardOrigin.JUDGE;
	}

	/** Tell whether it stands as that card says. */
	boolean says(KeyedCard card) {
		return this.upToDate && card.agreesWith(this.marks);
	}

}
