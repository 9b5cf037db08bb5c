package rimebook.rulings;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a question and of all rulings on it. */
public record QuestionId(UUID value) implements Serializable {

	/**
	 * Read an identity from text.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static QuestionId of(String text) {
		return new QuestionId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
