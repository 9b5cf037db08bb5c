package rimebook.panels;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a declared interest. */
public record InterestId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static InterestId of(String text) {
		return new InterestId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
