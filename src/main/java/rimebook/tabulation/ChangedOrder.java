package rimebook.tabulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;

/**
 * Two teams whose places stand in another order than before.
 *
 * @param first the one that was ahead, or of two that were level the one now ahead
 * @param second the other
 */
record ChangedOrder(String first, String second) {

	/**
	 * Find all such pairs.
	 * @param before places before, by identifier
	 * @param after places after
	 * @return pairs of teams with a place both times, in the order before
	 */
	static List<ChangedOrder> of(SortedMap<String, Integer> before, Map<String, Integer> after) {
		List<String> entries = before.entrySet()
			.stream()
			.filter((entry) -> after.containsKey(entry.getKey()))
			.sorted(Map.Entry.comparingByValue())
			.map(Map.Entry::getKey)
			.toList();
		List<ChangedOrder> changed = new ArrayList<>();
		for (int i = 0; i < entries.size(); i++) {
			for (String other : entries.subList(i + 1, entries.size())) {
				String entry = entries.get(i);
				int was = compare(before, entry, other);
				int is = compare(after, entry, other);
				if (was != is) {
					changed.add((was == 0 && is > 0) ? new ChangedOrder(other, entry) : new ChangedOrder(entry, other));
				}
			}
		}
		return changed;
	}

	private static int compare(Map<String, Integer> places, String one, String other) {
		return Objects.requireNonNull(places.get(one)).compareTo(Objects.requireNonNull(places.get(other)));
	}

}
