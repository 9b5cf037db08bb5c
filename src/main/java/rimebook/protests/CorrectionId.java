package rimebook.protests;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a correction. */
public record CorrectionId(UUID value) implements Serializable {

	/**
	 * Read an identity from text.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static CorrectionId of(String text) {
		return new CorrectionId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
