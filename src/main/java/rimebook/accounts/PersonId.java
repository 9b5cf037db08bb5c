package rimebook.accounts;

import java.io.Serializable;
import java.util.UUID;

/** The identity of a person who may sign in. */
public record PersonId(UUID value) implements Serializable {

	/**
	 * Read the identity from its text.
	 * @throws IllegalArgumentException if the text is no UUID
	 */
	public static PersonId of(String text) {
		return new PersonId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
