package rimebook.panels;

import java.time.Instant;
import java.util.UUID;

/**
 * A device from which seat codes were guessed until it was stopped.
 *
 * @param at when it was stopped, UTC
 * @param until when it may try again by itself, UTC
 * @param stopped whether it has to wait now
 * @param freedBy who let it try again before, empty for nobody
 */
public record SeatGuess(UUID id, String address, String device, Instant at, Instant until, boolean stopped,
		String freedBy) {
}
