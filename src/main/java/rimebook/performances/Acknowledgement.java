package rimebook.performances;

import java.time.Instant;
import java.util.UUID;

/**
 * The service's word that it has a card: given only after the card is on disk.
 *
 * @param id the identity the device made
 * @param sequence the version of the card that was taken
 * @param receivedAt when it was first received, UTC; the same however often it is sent
 */
public record Acknowledgement(UUID id, int sequence, Instant receivedAt) {
}
