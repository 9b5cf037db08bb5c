package rimebook.rosters;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.entries.EntryId;

/**
 * Who was on a roster at one moment, as others keep it with what rests on it: places and
 * identities of people, and nothing that is known of them, so that it may be kept for
 * ever and published. Who an identity is today, if anything is still known of them, says
 * {@link Skaters#today}.
 *
 * <p>
 * Its text is lines that each end in a line feed, in ASCII; the same roster is the same
 * text: <pre>
 * roster 1
 * entry 3f0c7b5e-8a51-4b8e-9a58-0d2f6f0e5c11
 * place 1 left 7c9e6679-7425-40de-944b-e07fc1f90ae7
 * place 2 skates 16fd2706-8baf-433b-82eb-8c7fada847da
 * place 17 skates 886313e1-3b8a-5372-9b90-0c9aee199e5d instead-of 1
 * place 18 alternate 6ba7b810-9dad-11d1-80b4-00c04fd430c8
 * </pre> The first line names the form; a further one gets a further number, and this one
 * is read for ever. Places stand by their numbers, those that were left among them, with
 * {@code skates}, {@code alternate} or {@code left}; {@code instead-of} is the number of
 * the place whose skater that one stepped in for.
 *
 * @param places by their numbers, each once
 */
public record KeptRoster(EntryId entry, List<Place> places) {

	private static final String FORM = "roster 1";

	private static final Pattern ENTRY = Pattern.compile("entry ([0-9a-f-]{36})");

	private static final Pattern PLACE = Pattern
		.compile("place ([1-9][0-9]{0,5}) (skates|alternate|left) ([0-9a-f-]{36})(?: instead-of ([1-9][0-9]{0,5}))?");

	public KeptRoster {
		places = places.stream().sorted(Comparator.comparing(Place::number)).toList();
		Set<Integer> numbers = new HashSet<>();
		if (!places.stream().allMatch((place) -> numbers.add(place.number()))) {
			throw new IllegalArgumentException("A number stands twice on the roster of " + entry);
		}
	}

	static KeptRoster of(RosterView roster) {
		return new KeptRoster(roster.entry(),
				roster.places()
					.stream()
					.map((place) -> new Place(place.number(), place.role(), place.skater().id(), place.insteadOf()))
					.toList());
	}

	/**
	 * Read the text of one.
	 * @throws IllegalArgumentException if it is none
	 */
	public static KeptRoster read(String text) {
		List<String> lines = text.lines().toList();
		Matcher entry = ENTRY.matcher((lines.size() > 1) ? lines.get(1) : "");
		if (lines.isEmpty() || !lines.get(0).equals(FORM) || !entry.matches()) {
			throw new IllegalArgumentException("No roster of the form '" + FORM + "'");
		}
		List<Place> places = new ArrayList<>();
		lines.subList(2, lines.size()).forEach((line) -> places.add(Place.read(line)));
		KeptRoster roster = new KeptRoster(EntryId.of(entry.group(1)), places);
		if (!roster.text().equals(text)) {
			throw new IllegalArgumentException("The roster of " + roster.entry() + " is written otherwise");
		}
		return roster;
	}

	/** The text that {@link #read} understands; the same roster has the same. */
	public String text() {
		return FORM + "\nentry " + this.entry + "\n"
				+ this.places.stream().map((place) -> place.text() + "\n").collect(Collectors.joining());
	}

	/** Those who skate. */
	public List<Place> onIce() {
		return this.places.stream().filter((place) -> place.role() == PlaceRole.SKATES).toList();
	}

	/**
	 * Somebody's place.
	 *
	 * @param number from 1; no other place of the roster ever gets it
	 * @param insteadOf the number of the place whose skater this one stepped in for,
	 * {@code null} where nobody's
	 */
	public record Place(int number, PlaceRole role, SkaterView.Id skater, @Nullable Integer insteadOf) {

		private static Place read(String line) {
			Matcher place = PLACE.matcher(line);
			if (!place.matches()) {
				throw new IllegalArgumentException("No place on a roster: '" + line + "'");
			}
			return new Place(Integer.parseInt(place.group(1)),
					PlaceRole.valueOf(place.group(2).toUpperCase(Locale.ROOT)), SkaterView.Id.of(place.group(3)),
					(place.group(4) != null) ? Integer.valueOf(place.group(4)) : null);
		}

		private String text() {
			return "place " + this.number + " " + this.role.name().toLowerCase(Locale.ROOT) + " " + this.skater
					+ ((this.insteadOf != null) ? " instead-of " + this.insteadOf : "");
		}

	}

}
