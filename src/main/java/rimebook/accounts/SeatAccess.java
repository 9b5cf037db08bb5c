package rimebook.accounts;

import org.jspecify.annotations.Nullable;

/**
 * How a tablet comes to a seat, and which one is there.
 *
 * @param shownCode the code to be printed on the seat's slip; null if none was issued or
 * it is shown no longer, since a tablet has joined or it was made on another node, before
 * this one started or over a day ago. It is kept as a digest only.
 * @param device the tablet that holds the seat; all empty if none does
 */
public record SeatAccess(@Nullable String shownCode, SeatDevice device) {

	static final SeatAccess NONE = new SeatAccess(null, SeatDevice.NONE);

}
