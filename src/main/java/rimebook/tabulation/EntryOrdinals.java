package rimebook.tabulation;

import java.util.Arrays;
import java.util.List;

/**
 * One team's ordinals as printed on a published sheet.
 *
 * @param entry identifier, unique in the segment
 * @param ordinals whole places, one of each judge in the panel's order: {@code 1} is 1st
 * (not hundredths). They need not form a complete ranking: part of a field may be
 * tabulated by itself
 */
public record EntryOrdinals(String entry, List<Integer> ordinals) {

	/** The highest ordinal accepted. */
	public static final int HIGHEST = 9999;

	/**
	 * Check the entry by itself.
	 * @throws TabulationException {@code entry-missing}, {@code no-judges} or
	 * {@code ordinal-out-of-range}
	 */
	public EntryOrdinals {
		ordinals = List.copyOf(ordinals);
		if (entry.isBlank()) {
			throw TabulationException.blankEntry();
		}
		if (ordinals.isEmpty()) {
			throw TabulationException.noJudges(entry);
		}
		for (int ordinal : ordinals) {
			if (ordinal < 1 || ordinal > HIGHEST) {
				throw TabulationException.ordinalOutOfRange(entry, ordinal);
			}
		}
	}

	/**
	 * Return a team with these ordinals.
	 * @param entry identifier
	 * @param ordinals whole places, one of each judge
	 * @return the entry
	 */
	public static EntryOrdinals of(String entry, Integer... ordinals) {
		return new EntryOrdinals(entry, Arrays.asList(ordinals));
	}

}
