package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import rimebook.tabulation.Ranking.Rank;

/**
 * Combines segments into the result of an event by factored places: each place times the
 * factor of its segment, lowest total wins, equal totals go by the better place in the
 * last segment, teams still equal share the place. Works while the last segment is under
 * way: teams without a place in it follow behind those who have one. Earlier segment
 * places never move up when a team leaves the event.
 */
public final class Combination {

	/** Within a status the order is that of the map, by identifier. */
	private static final Comparator<FactoredPlaces> UNPLACED = Comparator
		.comparing((FactoredPlaces places) -> places.entry().status());

	private final CombinationRules rules;

	private final Map<String, FactoredPlaces> entries = new TreeMap<>();

	private Combination(CombinationRules rules, Collection<EntryPlaces> entries) {
		this.rules = rules;
		entries.forEach((entry) -> this.entries.put(entry.entry(), FactoredPlaces.of(rules, entry)));
	}

	/**
	 * Combine the segments.
	 * @param rules factors and policies of the event
	 * @param entries every team of the event, in any order
	 * @return the standing
	 * @throws TabulationException {@code duplicate-entry} or {@code uneven-places}
	 */
	public static EventStanding combine(CombinationRules rules, List<EntryPlaces> entries) {
		PanelCheck.eachOnce(entries.stream().map(EntryPlaces::entry).toList());
		entries.stream().sorted(Comparator.comparing(EntryPlaces::entry)).forEach((entry) -> check(rules, entry));
		return new EventStanding(rules.factors(), new Combination(rules, entries).rows());
	}

	private static void check(CombinationRules rules, EntryPlaces entry) {
		if (entry.places().size() != rules.factors().size()) {
			throw TabulationException.unevenPlaces(entry.entry(), entry.places().size(), rules.factors().size());
		}
	}

	private List<EventStanding.EventRow> rows() {
		List<EventStanding.EventRow> rows = new ArrayList<>();
		for (Rank rank : Ranking.of(contenders(), notKeeping())) {
			rows.add(row(Objects.requireNonNull(this.entries.get(rank.entry())), rank.placing()));
		}
		this.entries.values()
			.stream()
			.filter((places) -> !keepsPlace(places))
			.sorted(UNPLACED)
			.forEach((places) -> rows.add(row(places, Placing.NONE)));
		return rows;
	}

	private List<Ranking.Contender> contenders() {
		return this.entries.values()
			.stream()
			.filter((places) -> keepsPlace(places) || leavesGap(places))
			.map((places) -> new Ranking.Contender(places.entry().entry(),
					places.measures(this.rules.incompleteOrder())))
			.toList();
	}

	private Set<String> notKeeping() {
		return this.entries.values()
			.stream()
			.filter((places) -> !keepsPlace(places))
			.map((places) -> places.entry().entry())
			.collect(Collectors.toSet());
	}

	private boolean keepsPlace(FactoredPlaces places) {
		return places.hasStarted() && places.entry().status() == EntryStatus.SKATED;
	}

	private boolean leavesGap(FactoredPlaces places) {
		return places.hasStarted() && places.entry().status() == EntryStatus.DISQUALIFIED
				&& this.rules.disqualifiedPlaces() == DisqualifiedPlaces.LEAVE_GAPS;
	}

	private EventStanding.EventRow row(FactoredPlaces places, Placing placing) {
		EntryPlaces entry = places.entry();
		return new EventStanding.EventRow(entry.entry(), entry.status(), placing, places.total(), entry.places(),
				places.factored());
	}

}
