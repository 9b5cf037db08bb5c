package rimebook.competition;

import java.io.Serializable;
import java.util.UUID;

/** Identity of an event of a competition. */
public record EventId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static EventId of(String text) {
		return new EventId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
