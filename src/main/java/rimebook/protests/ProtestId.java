package rimebook.protests;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a protest. */
public record ProtestId(UUID value) implements Serializable {

	/**
	 * Read an identity from text.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static ProtestId of(String text) {
		return new ProtestId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
