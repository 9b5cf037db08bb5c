package rimebook.results;

import java.util.ArrayList;
import java.util.List;

import rimebook.competition.EventView;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;

/**
 * Names the chosen rule set on every sheet. The names of the two marks are those of US
 * Figure Skating, "The 6.0 System".
 */
final class RuleSetWords {

	private RuleSetWords() {
	}

	/** The rule set of a segment. */
	static String of(PlacementRules rules, EventView event) {
		List<String> words = method(rules, event);
		words.add("equal totals of a judge go by the "
				+ ((rules.cardTieBreak() == PlacementRules.CardTieBreak.FIRST_MARK) ? "first" : "second") + " mark");
		words.addAll(departures(rules));
		return String.join("; ", words);
	}

	/** The rule set of a whole event. */
	static String ofEvent(PlacementRules rules, EventView event) {
		List<String> words = method(rules, event);
		words.add("segments combined by factored places, equal totals by the last segment");
		words.addAll(departures(rules));
		return String.join("; ", words);
	}

	private static List<String> method(PlacementRules rules, EventView event) {
		List<String> words = new ArrayList<>();
		words.add((rules.method() == PlacementRules.PlacementMethod.MAJORITY) ? "Majority of ordinals"
				: "One-by-one comparison");
		words.add(event.judges() + " judges");
		return words;
	}

	/** Only what differs from the usual is said, so that it is noticed. */
	private static List<String> departures(PlacementRules rules) {
		List<String> words = new ArrayList<>();
		if (rules.sharedOrdinals() == PlacementRules.SharedOrdinals.MEAN) {
			words.add("level teams share the mean ordinal");
		}
		if (rules.equalJudgesInFavour() != PlacementRules.EqualJudgesInFavour.BOTH_WIN) {
			words.add("an even comparison is not a full win for both");
		}
		if (rules.zeroMark() == PlacementRules.ZeroMark.REFUSE) {
			words.add("a mark of 0.0 is refused");
		}
		if (rules.disqualifiedPlaces() == DisqualifiedPlaces.CLOSE_ALL_PLACES) {
			words.add("all places close up behind a disqualified team");
		}
		if (rules.disqualifiedPlaces() == DisqualifiedPlaces.LEAVE_GAPS) {
			words.add("the place of a disqualified team stays empty");
		}
		return words;
	}

	static String firstMark(SegmentKind kind) {
		return (kind == SegmentKind.SHORT) ? "Required Elements" : "Technical Merit";
	}

	static String secondMark() {
		return "Presentation";
	}

}
