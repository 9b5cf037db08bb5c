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
		if (judges > 0 && judges % 2 == 0 && rules.evenPanel() == PlacementRules.EvenPanel.REFUSE) {
			throw TabulationException.evenPanel(judges);
		}
		return judges;
	}

	static void marks(PlacementRules rules, SortedMap<String, EntryCards> marked) {
		marked.forEach((entry, cards) -> cards.cards().forEach((card) -> {
			if (rules.marksPerCard() == PlacementRules.MarksPerCard.ONE && card.second() != 0) {
				throw TabulationException.secondMarkGiven(entry);
			}
			if (rules.zeroMark() == PlacementRules.ZeroMark.REFUSE && isZeroIn(rules, card)) {
				throw TabulationException.zeroMark(entry);
			}
		}));
	}

	private static boolean isZeroIn(PlacementRules rules, CardMarks card) {
		return card.first() == 0 || (rules.marksPerCard() == PlacementRules.MarksPerCard.TWO && card.second() == 0);
	}

}
