package rimebook.accounts;

import java.time.Instant;
import java.util.UUID;

/**
 * An address from which seat codes were guessed until it was stopped.
 *
 * @param device the address and kind of browser
 * @param at when it was stopped
 * @param until when it may try again by itself
 * @param stopped whether it has to wait now
 * @param freedBy who let it try again before, empty for nobody
 */
public record GuessedFrom(UUID id, String address, String device, Instant at, Instant until, boolean stopped,
		String freedBy) {
}
