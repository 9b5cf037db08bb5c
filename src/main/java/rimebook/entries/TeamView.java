package rimebook.entries;

import java.io.Serializable;
import java.util.UUID;

/**
 * A team of a club.
 *
 * @param spokenAs how the announcer says the name; empty when as it is written
 */
public record TeamView(Id id, String name, ClubView club, String spokenAs) {

	/** Identity of a team. */
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
