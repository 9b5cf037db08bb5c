package rimebook.accounts;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * The tablet that holds a seat.
 *
 * @param pairedAt when it joined, null if none has
 * @param lastHeardAt when it last asked for something, to within a few seconds, null if
 * none has joined
 * @param device its address and browser, empty if none has joined
 * @param waiting how many cards it has not been able to hand over, as it last said
 * @param faulty whether its page could not show everything, as it last said
 * @param issuedAt when the code that it joins with was issued, null if none was
 */
public record SeatDevice(@Nullable Instant pairedAt, @Nullable Instant lastHeardAt, String device, int waiting,
		boolean faulty, @Nullable Instant issuedAt) {

	static final SeatDevice NONE = new SeatDevice(null, null, "", 0, false, null);

}
