package rimebook.rosters;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.entries.ClubView;

/**
 * A person who skates. Only the secretary and the referee may be shown all of it.
 *
 * @param facts what is known, all of it empty once it was deleted
 * @param consent whether the name may be printed
 * @param isErased whether what was known was deleted
 * @param mergedInto who they turned out to be, {@code null} as long as they are somebody
 * of their own
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record SkaterView(Id id, Facts facts, Consent consent, boolean isErased, @Nullable Id mergedInto, int version) {

	/** Tell whether they can be put on rosters: known, and somebody of their own. */
	public boolean isThere() {
		return !this.isErased && this.mergedInto == null;
	}

	/** Given and family name; empty once deleted. */
	public String name() {
		return (this.facts.givenName() + " " + this.facts.familyName()).strip();
	}

	/** The club that they are a member of. */
	public ClubView.Id club() {
		return this.facts.club();
	}

	/** Identity of a person who skates. */
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

	/**
	 * What is known of somebody.
	 *
	 * @param birthDate {@code null} where it is not known
	 * @param membershipNumber empty where it is not known
	 */
	public record Facts(String givenName, String familyName, @Nullable LocalDate birthDate, String membershipNumber,
			ClubView.Id club) {
	}

	/**
	 * Whether the name may be printed and shown to everybody.
	 *
	 * @param isGiven only what was agreed to is shown
	 * @param guardian who agreed for a minor; empty where they agreed themselves
	 * @param on the day it was agreed to, {@code null} where it was not
	 */
	public record Consent(boolean isGiven, String guardian, @Nullable LocalDate on) {

		/** Nobody agreed to anything. */
		public static final Consent NONE = new Consent(false, "", null);

	}

}
