package rimebook.panels;

import java.io.Serializable;
import java.util.UUID;

/** Identity of an official. */
public record OfficialId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static OfficialId of(String text) {
		return new OfficialId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
