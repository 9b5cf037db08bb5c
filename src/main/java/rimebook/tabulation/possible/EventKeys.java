package rimebook.tabulation.possible;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryPlaces;
import rimebook.tabulation.EntryStatus;

/**
 * Where each team would be in the event with each place in the last segment, as numbers
 * that sort: a lower key is a better team, equal keys share the place. Teams that are not
 * in the last segment follow behind all who are, so they have none.
 */
final class EventKeys {

	private static final int PLACE_BITS = 14;

	private static final int TOTAL_BITS = 34;

	private static final int SEGMENT_BITS = 5;

	private static final long INCOMPLETE = 1L << (PLACE_BITS + TOTAL_BITS + SEGMENT_BITS);

	/** By team, then by place; null for a team that gets no place in the event. */
	private final long[] @Nullable [] keys;

	private EventKeys(long[] @Nullable [] keys) {
		this.keys = keys;
	}

	static EventKeys of(SegmentUnderWay.EarlierSegments earlier, Teams teams) {
		Map<String, EntryPlaces> known = new HashMap<>();
		earlier.places().forEach((entry) -> known.put(entry.entry(), entry));
		long[] @Nullable [] keys = new long[teams.size()][];
		for (int team = 0; team < teams.size(); team++) {
			EntryPlaces places = known.get(teams.name(team));
			if (competes(earlier.rules(), teams.status(team), places)) {
				keys[team] = keys(earlier.rules(), earlierPlaces(earlier, places), teams.size());
			}
		}
		return new EventKeys(keys);
	}

	private static boolean competes(CombinationRules rules, EntryStatus inSegment, @Nullable EntryPlaces places) {
		EntryStatus status = (places == null || inSegment != EntryStatus.SKATED) ? inSegment : places.status();
		return status == EntryStatus.SKATED
				|| (status == EntryStatus.DISQUALIFIED && rules.disqualifiedPlaces() == DisqualifiedPlaces.LEAVE_GAPS);
	}

	private static List<@Nullable Integer> earlierPlaces(SegmentUnderWay.EarlierSegments earlier,
			@Nullable EntryPlaces places) {
		return (places != null) ? places.places()
				: new ArrayList<>(Collections.nCopies(earlier.rules().factors().size() - 1, null));
	}

	private static long[] keys(CombinationRules rules, List<@Nullable Integer> before, int mostPlaces) {
		long[] keys = new long[mostPlaces + 1];
		for (int place = 1; place <= mostPlaces; place++) {
			keys[place] = key(rules, before, place);
		}
		return keys;
	}

	private static long key(CombinationRules rules, List<@Nullable Integer> before, int place) {
		int missing = (int) before.stream().filter(Objects::isNull).count();
		long total = (long) place * rules.factors().get(before.size());
		for (int i = 0; i < before.size(); i++) {
			Integer earlier = before.get(i);
			total += (earlier != null) ? (long) earlier * rules.factors().get(i) : 0;
		}
		if (missing == 0) {
			return (total << PLACE_BITS) + place;
		}
		return INCOMPLETE + ((rules.incompleteOrder() == CombinationRules.IncompleteOrder.LAST_SEGMENT)
				? ((((long) place << SEGMENT_BITS) + missing) << TOTAL_BITS) + total
				: ((((long) missing << TOTAL_BITS) + total) << PLACE_BITS) + place);
	}

	boolean competes(int team) {
		return this.keys[team] != null;
	}

	/** Whether a team that has this place in the segment is ahead of another's key. */
	boolean isBetter(int team, int place, long than) {
		return competes(team) && key(team, place) < than;
	}

	/** Return the key of a team that competes. */
	long key(int team, int place) {
		return Objects.requireNonNull(this.keys[team])[place];
	}

}
