package rimebook.accounts;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * A second tablet that asks for a seat whose own tablet is alive.
 *
 * @param seat the seat's identity
 * @param label the seat as printed on the record
 * @param device the asking tablet's address and browser
 * @param askedAt when it asked, UTC; names the question
 * @param holder the address and browser of the tablet that has the seat
 * @param heardAt when that one was heard last, UTC
 */
public record SeatQuestion(UUID seat, String label, String device, Instant askedAt, String holder,
		@Nullable Instant heardAt) {
}
