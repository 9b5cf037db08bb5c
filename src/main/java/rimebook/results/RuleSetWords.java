package rimebook.results;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import rimebook.competition.EventView;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;
import rimebook.wording.Sentence;

/**
 * Names the chosen rule set on every sheet. The names of the two marks are those of US
 * Figure Skating, "The 6.0 System".
 */
final class RuleSetWords {

	private RuleSetWords() {
	}

	/** The rule set of a segment. */
	static Sentence of(PlacementRules rules, EventView event) {
		return together(rules, event, (rules.cardTieBreak() == PlacementRules.CardTieBreak.FIRST_MARK)
				? "rules.by-first-mark" : "rules.by-second-mark");
	}

	/** The rule set of a whole event. */
	static Sentence ofEvent(PlacementRules rules, EventView event) {
		return together(rules, event, "rules.combined");
	}

	private static Sentence together(PlacementRules rules, EventView event, String levelTotals) {
		Sentence method = Sentence.of(
				(rules.method() == PlacementRules.PlacementMethod.MAJORITY) ? "rules.majority" : "rules.one-by-one",
				event.judging().judges());
		return Stream.concat(Stream.of(Sentence.of(levelTotals)), departures(rules).stream())
			.reduce(method, (before, next) -> Sentence.of("figure.series.semicolon", before, next));
	}

	/** Only what differs from the usual is said, so that it is noticed. */
	private static List<Sentence> departures(PlacementRules rules) {
		List<Sentence> words = new ArrayList<>();
		if (rules.sharedOrdinals() == PlacementRules.SharedOrdinals.MEAN) {
			words.add(Sentence.of("rules.mean-ordinal"));
		}
		if (rules.equalJudgesInFavour() != PlacementRules.EqualJudgesInFavour.BOTH_WIN) {
			words.add(Sentence.of("rules.even-comparison"));
		}
		if (rules.zeroMark() == PlacementRules.ZeroMark.REFUSE) {
			words.add(Sentence.of("rules.zero-refused"));
		}
		if (rules.disqualifiedPlaces() == DisqualifiedPlaces.CLOSE_ALL_PLACES) {
			words.add(Sentence.of("rules.places-close-up"));
		}
		if (rules.disqualifiedPlaces() == DisqualifiedPlaces.LEAVE_GAPS) {
			words.add(Sentence.of("rules.place-stays-empty"));
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
