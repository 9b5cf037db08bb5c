package rimebook.placement;

import java.time.Instant;

import rimebook.panels.SeatId;
import rimebook.tabulation.CardMarks;

/**
 * The version of a card that counts now.
 *
 * @param corrected whether two officials put it in after closing
 */
public record CardView(SeatId seat, CardMarks marks, int sequence, Instant receivedAt, boolean corrected) {
}
