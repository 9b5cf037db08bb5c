package rimebook.entries;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a team. */
public record TeamId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static TeamId of(String text) {
		return new TeamId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
