package rimebook.accounts;

import java.io.Serializable;
import java.util.Set;
import java.util.UUID;

/**
 * A person who may sign in, as others see them.
 *
 * @param id the identity
 * @param signInName what they type to sign in, in small letters
 * @param displayName the name on pages and on the record, unlike everybody else's
 * @param roles what they may do
 * @param active whether they may sign in at all
 * @param version given back with a change
 */
public record PersonView(Id id, String signInName, String displayName, Set<Role> roles, boolean active, int version) {

	/** The identity of a person who may sign in. */
	public record Id(UUID value) implements Serializable {

		/**
		 * Read the identity from its text.
		 * @throws IllegalArgumentException if the text is no UUID
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
