package rimebook.performances;

import java.time.Instant;
import java.util.UUID;

/**
 * What a tablet says of a card that it was told the service has, and that the service,
 * which was started from a copy since, lacks.
 *
 * @param life in which life of the service the card was acknowledged
 * @param receivedAt when it was first received, as the acknowledgement said, UTC
 */
public record ReturnedCard(UUID life, Instant receivedAt) {

	/** Tells whose cards may come back; a later module that keeps copies does. */
	public interface EarlierLives {

		/**
		 * Refuse what was not acknowledged by this service before it was started from a
		 * copy.
		 * @throws rimebook.shared.ConflictException {@code card-of-another-day}
		 */
		void require(ReturnedCard card);

	}

}
