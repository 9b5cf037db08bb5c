package rimebook.competition;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a competition. */
public record CompetitionId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static CompetitionId of(String text) {
		return new CompetitionId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
