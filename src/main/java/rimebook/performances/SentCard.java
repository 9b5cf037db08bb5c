package rimebook.performances;

import java.time.Instant;

/**
 * A seat's card as the referee sees it.
 *
 * @param words the marks in a few words
 * @param sequence its version, from 1
 */
public record SentCard(String words, int sequence, Instant receivedAt) {
}
