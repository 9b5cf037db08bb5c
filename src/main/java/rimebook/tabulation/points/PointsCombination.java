package rimebook.tabulation.points;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

import rimebook.tabulation.CombinationRules;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.EntryStatus;
import rimebook.tabulation.Ranking;
import rimebook.tabulation.Placing;
import rimebook.tabulation.TabulationException;

/**
 * Combines segments into the result of an event: totals are added, the highest sum wins,
 * equal sums go by the higher total of the last segment, teams still equal share the
 * place. In an event of one segment, its places are the result. Works while the last
 * segment is under way: teams without a total in it, and those who did not qualify for
 * it, follow behind those who have one, by their place in the last segment they reached.
 */
public final class PointsCombination {

	private static final Comparator<EntryTotals> UNPLACED = Comparator.comparing(EntryTotals::status)
		.thenComparing(EntryTotals::entry);

	private final Map<String, EntryTotals> entries = new TreeMap<>();

	private final DisqualifiedPlaces disqualifiedPlaces;

	private PointsCombination(DisqualifiedPlaces disqualifiedPlaces, List<EntryTotals> entries) {
		this.disqualifiedPlaces = disqualifiedPlaces;
		entries.forEach((entry) -> this.entries.put(entry.entry(), entry));
	}

	/**
	 * Combine totals.
	 * @param segments how many the event has, 1 to 20
	 * @param disqualifiedPlaces what becomes of the place of a disqualified team
	 * @param entries every team of the event, in any order
	 * @return the standing
	 * @throws TabulationException {@code segments-out-of-range}, {@code duplicate-entry}
	 * or {@code uneven-segments}
	 */
	public static PointsEventStanding combine(int segments, DisqualifiedPlaces disqualifiedPlaces,
			List<EntryTotals> entries) {
		if (segments < 1 || segments > CombinationRules.MOST_SEGMENTS) {
			throw Refusal.segmentsOutOfRange(segments, CombinationRules.MOST_SEGMENTS);
		}
		Refusal.repeated(entries.stream().map(EntryTotals::entry)).ifPresent((entry) -> {
			throw Refusal.duplicateEntry(entry);
		});
		entries.stream()
			.sorted(Comparator.comparing(EntryTotals::entry))
			.filter((entry) -> entry.segments().size() != segments)
			.findFirst()
			.ifPresent((entry) -> {
				throw Refusal.unevenSegments(entry.entry(), entry.segments().size(), segments);
			});
		return new PointsEventStanding(segments, new PointsCombination(disqualifiedPlaces, entries).rows());
	}

	/**
	 * Combine the standings of segments. A team's status in the event is that of the last
	 * segment in whose standing it is; a team missing from a later one did not qualify or
	 * has not skated it yet.
	 * @param disqualifiedPlaces what becomes of the place of a disqualified team
	 * @param standings of every segment of the event in the order skated; of one not
	 * begun an empty one
	 * @return the standing of the event
	 * @throws TabulationException {@code segments-out-of-range}
	 */
	public static PointsEventStanding ofStandings(DisqualifiedPlaces disqualifiedPlaces,
			List<PointsStanding> standings) {
		Set<String> entries = new TreeSet<>();
		standings.forEach((standing) -> standing.rows().forEach((row) -> entries.add(row.entry())));
		return combine(standings.size(), disqualifiedPlaces,
				entries.stream().map((entry) -> totals(entry, standings)).toList());
	}

	private static EntryTotals totals(String entry, List<PointsStanding> standings) {
		List<EntryTotals.@Nullable SegmentTotal> totals = new ArrayList<>();
		EntryStatus status = EntryStatus.SKATED;
		for (PointsStanding standing : standings) {
			Optional<PointsStanding.ScoredEntry> row = standing.row(entry);
			totals.add(row.flatMap(PointsStanding.ScoredEntry::segmentTotal).orElse(null));
			status = row.map(PointsStanding.ScoredEntry::status).orElse(status);
		}
		return new EntryTotals(entry, status, totals);
	}

	private List<PointsEventStanding.PointsEventRow> rows() {
		List<PointsEventStanding.PointsEventRow> rows = new ArrayList<>();
		for (Ranking.Rank rank : Ranking.of(contenders(), notKeeping())) {
			rows.add(row(Objects.requireNonNull(this.entries.get(rank.entry())), rank.placing()));
		}
		this.entries.values()
			.stream()
			.filter((entry) -> !keepsPlace(entry))
			.sorted(UNPLACED)
			.forEach((entry) -> rows.add(row(entry, Placing.NONE)));
		return rows;
	}

	private List<Ranking.Contender> contenders() {
		return this.entries.values()
			.stream()
			.filter((entry) -> keepsPlace(entry) || leavesGap(entry))
			.map((entry) -> new Ranking.Contender(entry.entry(), entry.measures()))
			.toList();
	}

	private Set<String> notKeeping() {
		return this.entries.values()
			.stream()
			.filter((entry) -> !keepsPlace(entry))
			.map(EntryTotals::entry)
			.collect(Collectors.toSet());
	}

	private static boolean keepsPlace(EntryTotals entry) {
		return entry.hasStarted() && entry.status() == EntryStatus.SKATED;
	}

	private boolean leavesGap(EntryTotals entry) {
		return entry.hasStarted() && entry.status() == EntryStatus.DISQUALIFIED
				&& this.disqualifiedPlaces == DisqualifiedPlaces.LEAVE_GAPS;
	}

	private static PointsEventStanding.PointsEventRow row(EntryTotals entry, Placing placing) {
		return new PointsEventStanding.PointsEventRow(entry.entry(), entry.status(), placing, entry.total(),
				entry.segments());
	}

}
