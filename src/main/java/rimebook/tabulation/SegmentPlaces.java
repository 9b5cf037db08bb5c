package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

import rimebook.tabulation.Ranking.Rank;

/** Gives the places of a segment to teams whose ordinals are known. */
final class SegmentPlaces {

	private static final Comparator<JudgedEntry> UNPLACED = Comparator.comparing(JudgedEntry::status)
		.thenComparing(JudgedEntry::entry);

	private final PlacementRules rules;

	private final TreeMap<String, JudgedEntry> entries;

	private final Map<String, Figures> figures;

	SegmentPlaces(PlacementRules rules, Collection<JudgedEntry> entries) {
		this.rules = rules;
		this.entries = entries.stream()
			.collect(Collectors.toMap(JudgedEntry::entry, Function.identity(), (a, b) -> a, TreeMap::new));
		this.figures = figures();
	}

	private Map<String, Figures> figures() {
		TreeMap<String, List<Integer>> ordinals = new TreeMap<>();
		this.entries.values()
			.stream()
			.filter(JudgedEntry::isOnTheCards)
			.forEach((entry) -> ordinals.put(entry.entry(), entry.ordinals()));
		OneByOneTable table = OneByOneTable.of(this.rules, ordinals);
		return ordinals.entrySet()
			.stream()
			.collect(Collectors.toMap(Map.Entry::getKey,
					(entry) -> (this.rules.method() == PlacementRules.PlacementMethod.MAJORITY)
							? Figures.MajorityFigures.of(entry.getValue()) : table.figures(entry.getKey())));
	}

	/** Return the rows: placed teams by place, then the others by status. */
	List<PlacedEntry> rows() {
		List<PlacedEntry> rows = new ArrayList<>();
		ranks()
			.forEach((rank) -> rows.add(row(Objects.requireNonNull(this.entries.get(rank.entry())), rank.placing())));
		this.entries.values()
			.stream()
			.filter((entry) -> entry.status() != EntryStatus.SKATED)
			.sorted(UNPLACED)
			.forEach((entry) -> rows.add(row(entry, Placing.NONE)));
		return rows;
	}

	private List<Rank> ranks() {
		Set<String> removed = this.figures.keySet()
			.stream()
			.filter((entry) -> Objects.requireNonNull(this.entries.get(entry)).status() != EntryStatus.SKATED)
			.collect(Collectors.toSet());
		return Ranking.of(this.figures.entrySet()
			.stream()
			.map((entry) -> new Ranking.Contender(entry.getKey(), entry.getValue().measures()))
			.toList(), removed);
	}

	private PlacedEntry row(JudgedEntry entry, Placing placing) {
		return new PlacedEntry(entry.entry(), entry.status(), placing, entry.cards(), entry.ordinals(),
				this.figures.get(entry.entry()));
	}

}
