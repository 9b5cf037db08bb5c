package rimebook.panels;

import java.io.Serializable;
import java.util.UUID;

/**
 * An official of the register.
 *
 * @param club empty for somebody who belongs to none
 * @param qualification empty where none is written down
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record OfficialView(Id id, String name, String club, String qualification, int version) {

	/** Identity of an official. */
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
