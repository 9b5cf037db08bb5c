package rimebook.tabulation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Turns each judge's cards into that judge's ordinals: higher total first, equal totals
 * by the tie-break mark, level cards share as the rules say. Made afresh from the marks
 * every time, since a later team changes the ordinals of earlier ones.
 */
final class CardOrdinals {

	private final SharedOrdinals sharedOrdinals;

	private final Comparator<CardMarks> worseFirst;

	CardOrdinals(PlacementRules rules) {
		this.sharedOrdinals = rules.sharedOrdinals();
		this.worseFirst = Comparator.comparingInt(CardMarks::total)
			.thenComparingInt(rules.cardTieBreak()::decidingMark);
	}

	/** Return each team's ordinals in hundredths, in the panel's order. */
	SortedMap<String, List<Integer>> of(SortedMap<String, EntryCards> entries) {
		SortedMap<String, List<Integer>> ordinals = new TreeMap<>();
		entries.forEach((name, entry) -> ordinals.put(name, ordinals(entry, entries.values())));
		return ordinals;
	}

	private List<Integer> ordinals(EntryCards entry, Collection<EntryCards> all) {
		List<Integer> ordinals = new ArrayList<>();
		for (int i = 0; i < entry.cards().size(); i++) {
			int judge = i;
			ordinals
				.add(ordinal(entry.cards().get(judge), all.stream().map((other) -> other.cards().get(judge)).toList()));
		}
		return ordinals;
	}

	private int ordinal(CardMarks card, List<CardMarks> all) {
		int better = 0;
		int level = 0;
		for (CardMarks other : all) {
			int comparison = this.worseFirst.compare(other, card);
			better += (comparison > 0) ? 1 : 0;
			level += (comparison == 0) ? 1 : 0;
		}
		return this.sharedOrdinals.ordinal(better, level);
	}

}
