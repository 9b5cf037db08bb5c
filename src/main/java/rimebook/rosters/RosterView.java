package rimebook.rosters;

import java.io.Serializable;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;

/**
 * Who is on the roster of an entry, as it is at one moment, with what is known of them
 * then. Whoever keeps it with what rests on it keeps {@link #kept()}.
 *
 * @param places by their numbers, those that were left among them
 */
public record RosterView(EntryId entry, List<Place> places) {

	public RosterView {
		places = List.copyOf(places);
	}

	/** Those who skate. */
	public List<Place> onIce() {
		return of(PlaceRole.SKATES);
	}

	/** Those who stand by. */
	public List<Place> alternates() {
		return of(PlaceRole.ALTERNATE);
	}

	/** Those who were on the roster and are no longer. */
	public List<Place> gone() {
		return of(PlaceRole.LEFT);
	}

	/** Everybody who is on the roster now. */
	public List<Place> present() {
		return this.places.stream().filter((place) -> place.role() != PlaceRole.LEFT).toList();
	}

	/** The same without anything that is known of a person, to be kept for ever. */
	public KeptRoster kept() {
		return KeptRoster.of(this);
	}

	private List<Place> of(PlaceRole role) {
		return this.places.stream().filter((place) -> place.role() == role).toList();
	}

	/** Identity of a place on a roster. */
	public record PlaceId(UUID value) implements Serializable {

		/**
		 * Read an identity as it stands in an address.
		 * @throws IllegalArgumentException if the text is not a UUID
		 */
		public static PlaceId of(String text) {
			return new PlaceId(UUID.fromString(text));
		}

		@Override
		public String toString() {
			return this.value.toString();
		}

	}

	/**
	 * Somebody's place.
	 *
	 * @param number from 1 on each roster; no other place ever gets it
	 * @param insteadOf the number of the place whose skater this one stepped in for,
	 * {@code null} where nobody's
	 * @param version give it back with a change, so that nobody overwrites another's
	 */
	public record Place(PlaceId id, int number, SkaterView skater, PlaceRole role, @Nullable Integer insteadOf,
			int version) {
	}

}
