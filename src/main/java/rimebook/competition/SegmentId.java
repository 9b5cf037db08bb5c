package rimebook.competition;

import java.io.Serializable;
import java.util.UUID;

/** Identity of a segment of an event. */
public record SegmentId(UUID value) implements Serializable {

	/**
	 * Read an identity as it stands in an address.
	 * @throws IllegalArgumentException if the text is not a UUID
	 */
	public static SegmentId of(String text) {
		return new SegmentId(UUID.fromString(text));
	}

	@Override
	public String toString() {
		return this.value.toString();
	}

}
