package rimebook.entries;

import java.io.Serializable;
import java.util.UUID;

/** Identity of an entry. */
public record EntryId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static EntryId of(String text) {
		return new EntryId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
