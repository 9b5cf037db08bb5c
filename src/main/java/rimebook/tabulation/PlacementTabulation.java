package rimebook.tabulation;

import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Placement judging: from the cards of a segment to its standing. The result depends on
 * the rules and the set of entries only, never on the order in which they are given.
 *
 * <p>
 * Majority, as a sorting key. With {@code n} judges a majority is
 * {@code floor(n / 2) + 1}. The majority place of a team is the lowest place at which, or
 * better than which, a majority has it. Teams are ordered by (1) lower majority place,
 * (2) more judges at that place or better, (3) lower total of those judges' ordinals, (4)
 * lower total of all ordinals; teams still equal share the place. This orders teams
 * exactly as the hand procedure does that walks through the columns "1st", "2nd or
 * better", … and awards places as majorities appear.
 *
 * <p>
 * One-by-one. Two teams are compared judge by judge; a judge favours the one with the
 * better card, and both where level. More judges in favour is a win. Teams are ordered by
 * (1) more wins, (2) more judges in favour over all comparisons; teams still equal share
 * the place.
 */
public final class PlacementTabulation {

	private PlacementTabulation() {
	}

	/**
	 * Tabulate marks.
	 * @param rules the rule set of the segment
	 * @param entries every team of the segment known so far, in any order; none marked is
	 * fine
	 * @return the standing
	 * @throws TabulationException {@code duplicate-entry}, {@code uneven-cards},
	 * {@code panel-out-of-range} (more than 99 judges), {@code even-panel} or
	 * {@code zero-mark}
	 */
	public static SegmentStanding ofCards(PlacementRules rules, List<EntryCards> entries) {
		SortedMap<String, EntryCards> known = byName(entries, EntryCards::entry);
		SortedMap<String, EntryCards> marked = byName(
				known.values().stream().filter((entry) -> isOnTheCards(rules, entry)).toList(), EntryCards::entry);
		int judges = PanelCheck.judges(rules, counts(marked, (entry) -> entry.cards().size()));
		PanelCheck.marks(rules, marked);
		SortedMap<String, List<Integer>> ordinals = new CardOrdinals(rules).of(marked);
		return standing(rules, judges,
				known.values()
					.stream()
					.map((entry) -> JudgedEntry.of(entry, ordinals.getOrDefault(entry.entry(), List.of()))));
	}

	private static boolean isOnTheCards(PlacementRules rules, EntryCards entry) {
		return !entry.cards().isEmpty() && (entry.status() == EntryStatus.SKATED
				|| rules.disqualifiedPlaces() != DisqualifiedPlaces.CLOSE_ALL_PLACES);
	}

	/**
	 * Tabulate ordinals, as found on published sheets.
	 * @param rules the rule set of the segment
	 * @param entries the teams, in any order
	 * @return the standing
	 * @throws TabulationException {@code duplicate-entry}, {@code uneven-cards},
	 * {@code panel-out-of-range} or {@code even-panel}
	 */
	public static SegmentStanding ofOrdinals(PlacementRules rules, List<EntryOrdinals> entries) {
		SortedMap<String, EntryOrdinals> known = byName(entries, EntryOrdinals::entry);
		int judges = PanelCheck.judges(rules, counts(known, (entry) -> entry.ordinals().size()));
		return standing(rules, judges, known.values().stream().map(JudgedEntry::of));
	}

	private static <T> SortedMap<String, T> byName(Collection<T> entries, Function<T, String> name) {
		PanelCheck.eachOnce(entries.stream().map(name).toList());
		return entries.stream().collect(Collectors.toMap(name, Function.identity(), (a, b) -> a, TreeMap::new));
	}

	private static <T> SortedMap<String, Integer> counts(SortedMap<String, T> entries, ToIntFunction<T> size) {
		SortedMap<String, Integer> counts = new TreeMap<>();
		entries.forEach((name, entry) -> counts.put(name, size.applyAsInt(entry)));
		return counts;
	}

	private static SegmentStanding standing(PlacementRules rules, int judges, Stream<JudgedEntry> entries) {
		return new SegmentStanding(rules.method(), judges, new SegmentPlaces(rules, entries.toList()).rows());
	}

}
