package rimebook.performances;

import java.io.Serializable;
import java.util.UUID;

/** Identity of one team's performance in one segment. */
public record PerformanceId(UUID value) implements Serializable {

	/**
	 * Read an identity from text.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static PerformanceId of(String text) {
		return new PerformanceId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
