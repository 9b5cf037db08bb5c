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

	private final PlacementRules.SharedOrdinals sharedOrdinals;

	private final Comparator<CardMarks> betterFirst;

	CardOrdinals(PlacementRules rules) {
		this.sharedOrdinals = rules.sharedOrdinals();
		this.betterFirst = Comparator.comparingInt(CardMarks::total)
			.thenComparingInt(rules.cardTieBreak()::decidingMark)
			.reversed();
	}

	/** Return each team's ordinals in hundredths, in the panel's order. */
	SortedMap<String, List<Integer>> of(SortedMap<String, EntryCards> entries) {
		SortedMap<String, List<Integer>> ordinals = new TreeMap<>();
		entries.keySet().forEach((name) -> ordinals.put(name, new ArrayList<>()));
		int judges = entries.values().stream().mapToInt((entry) -> entry.cards().size()).max().orElse(0);
		for (int judge = 0; judge < judges; judge++) {
			rank(inOrder(entries.values(), judge), judge, ordinals);
		}
		return ordinals;
	}

	private List<EntryCards> inOrder(Collection<EntryCards> entries, int judge) {
		List<EntryCards> order = new ArrayList<>(entries);
		order.sort(Comparator.comparing((EntryCards entry) -> entry.cards().get(judge), this.betterFirst));
		return order;
	}

	private void rank(List<EntryCards> order, int judge, SortedMap<String, List<Integer>> ordinals) {
		int better = 0;
		while (better < order.size()) {
			List<EntryCards> level = order.subList(better, endOfLevel(order, judge, better));
			int ordinal = this.sharedOrdinals.ordinal(better, level.size());
			level.forEach((entry) -> ordinals.computeIfAbsent(entry.entry(), (name) -> new ArrayList<>()).add(ordinal));
			better += level.size();
		}
	}

	private int endOfLevel(List<EntryCards> order, int judge, int start) {
		CardMarks first = order.get(start).cards().get(judge);
		int end = start + 1;
		while (end < order.size() && this.betterFirst.compare(order.get(end).cards().get(judge), first) == 0) {
			end++;
		}
		return end;
	}

}
