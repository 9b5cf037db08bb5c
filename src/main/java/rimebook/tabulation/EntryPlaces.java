package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * One team's places in the segments of an event.
 *
 * @param entry identifier, unique in the event
 * @param status {@code SKATED} gets a final place; withdrawn, not finished and
 * disqualified teams are listed without one
 * @param places in each segment in the order skated, null where the team has none: not
 * qualified for it, not skated yet
 */
public record EntryPlaces(String entry, EntryStatus status, List<@Nullable Integer> places) {

	/** The highest segment place accepted. */
	public static final int HIGHEST = 9999;

	/**
	 * Check the entry by itself.
	 * @throws TabulationException {@code entry-missing} or {@code place-out-of-range}
	 */
	public EntryPlaces {
		places = Collections.unmodifiableList(new ArrayList<>(places));
		if (entry.isBlank()) {
			throw TabulationException.blankEntry();
		}
		for (Integer place : places) {
			if (place != null && (place < 1 || place > HIGHEST)) {
				throw TabulationException.placeOutOfRange(entry, place);
			}
		}
	}

	/**
	 * Return a team that stays in the event.
	 * @param entry identifier
	 * @param places in each segment, null where it has none
	 * @return the entry
	 */
	public static EntryPlaces of(String entry, @Nullable Integer... places) {
		return new EntryPlaces(entry, EntryStatus.SKATED, Arrays.asList(places));
	}

}
