package rimebook.entries;

import java.io.Serializable;
import java.util.UUID;

/** A club and the town it is at home in. */
public record ClubView(Id id, String name, String town) {

	/** Identity of a club. */
	public record Id(UUID value) implements Serializable {

		/**
		 * Read an identity as it stands in an address.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static Id of(String text) {
			return new Id(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

}
