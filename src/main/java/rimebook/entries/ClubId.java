package rimebook.entries;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a club. */
public record ClubId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static ClubId of(String text) {
		return new ClubId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
