package rimebook.panels;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a seat of an event's panel. */
public record SeatId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static SeatId of(String text) {
		return new SeatId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
