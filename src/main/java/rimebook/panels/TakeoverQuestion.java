package rimebook.panels;

import java.time.Instant;

/**
 * A tablet that asks for a seat whose own tablet is alive.
 *
 * @param device its address and browser
 * @param askedAt when it asked, UTC; names the question
 * @param holder the address and browser of the tablet that has the seat
 */
public record TakeoverQuestion(SeatId seat, String label, String device, Instant askedAt, String holder) {
}
