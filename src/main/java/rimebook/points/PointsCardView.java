package rimebook.points;

import java.time.Instant;

import rimebook.panels.SeatId;
import rimebook.performances.CardOrigin;

/**
 * The version of a judge's card that counts now, in points judging.
 *
 * @param sequence its version, from 1
 * @param receivedAt when, UTC
 * @param origin whether the seat's tablet sent it or it was keyed in from paper
 */
public record PointsCardView(SeatId seat, PointsMarks marks, int sequence, Instant receivedAt, CardOrigin origin) {
}
