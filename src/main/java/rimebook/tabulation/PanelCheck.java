package rimebook.tabulation;

import java.util.Collection;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What must be true before anything is tabulated. Of several faults the one reported does
 * not depend on the order of entries.
 */
final class PanelCheck {

	/** The most judges a panel may have. */
	static final int MOST_JUDGES = 99;

	private PanelCheck() {
	}

	static void eachOnce(Collection<String> entries) {
		Map<String, Long> counts = entries.stream()
			.collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
		counts.forEach((entry, count) -> {
			if (count > 1) {
				throw TabulationException.duplicateEntry(entry);
			}
		});
	}

	/**
	 * Return the number of judges.
	 * @param counts how many cards or ordinals each team has
	 */
	static int judges(PlacementRules rules, SortedMap<String, Integer> counts) {
		int judges = counts.values().stream().mapToInt(Integer::intValue).max().orElse(0);
		counts.forEach((entry, count) -> {
			if (count != judges) {
				throw TabulationException.unevenCards(entry, count, judges);
			}
		});
		if (judges > MOST_JUDGES) {
			throw TabulationException.panelOutOfRange(judges);
		}
		if (judges > 0 && judges % 2 == 0 && rules.evenPanel() == EvenPanel.REFUSE) {
			throw TabulationException.evenPanel(judges);
		}
		return judges;
	}

	static void zeroMarks(PlacementRules rules, SortedMap<String, EntryCards> marked) {
		if (rules.zeroMark() == ZeroMark.REFUSE) {
			marked.forEach((entry, cards) -> {
				if (cards.cards().stream().anyMatch((card) -> card.first() == 0 || card.second() == 0)) {
					throw TabulationException.zeroMark(entry);
				}
			});
		}
	}

}
