package rimebook.placement;

import java.math.BigDecimal;
import java.time.Instant;

import rimebook.performances.Acknowledgement;

/**
 * The version of a seat's card that the service has, told to the tablet whose other
 * version it refuses.
 *
 * @param sequence its version, from 1
 * @param first the first mark with one decimal
 * @param second the second mark with one decimal
 * @param receivedAt when it was received, UTC
 */
public record ReceivedCard(int sequence, BigDecimal first, BigDecimal second, Instant receivedAt) {

	static ReceivedCard of(CardSubmission card) {
		Acknowledgement known = card.acknowledged();
		return new ReceivedCard(card.sequence(), MarkWords.decimal(card.marks().first()),
				MarkWords.decimal(card.marks().second()), known.receivedAt());
	}

}
