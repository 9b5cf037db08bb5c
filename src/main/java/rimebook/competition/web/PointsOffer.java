package rimebook.competition.web;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.jspecify.annotations.Nullable;

import rimebook.competition.DraftEvent;
import rimebook.competition.RuleSets;
import rimebook.pages.Choice;
import rimebook.tabulation.SegmentKind;
import rimebook.tabulation.points.PointsRules;

/** Rule set and level of points judging as one choice: {@code rule-set/level}. */
final class PointsOffer {

	private PointsOffer() {
	}

	/** Every level of every rule set, after the answer that there is none. */
	static List<Choice> of(RuleSets ruleSets) {
		List<Choice> choices = new ArrayList<>(List.of(new Choice("", "–")));
		for (PointsRules rules : ruleSets.all()) {
			levels(rules).forEach((level) -> choices
				.add(new Choice(value(new DraftEvent.PointsChoice(rules.id(), level)), rules.title() + ": " + level)));
		}
		return choices;
	}

	private static Set<String> levels(PointsRules rules) {
		Set<String> levels = new LinkedHashSet<>();
		for (SegmentKind kind : SegmentKind.values()) {
			levels.addAll(rules.levels(kind));
		}
		return levels;
	}

	static String value(DraftEvent.@Nullable PointsChoice choice) {
		return (choice != null) ? choice.ruleSet() + "/" + choice.level() : "";
	}

	/** Read a choice; empty where there is none. */
	static Optional<DraftEvent.PointsChoice> read(@Nullable String value) {
		if (value == null) {
			return Optional.empty();
		}
		int stroke = value.indexOf('/');
		return (stroke < 1 || stroke == value.length() - 1) ? Optional.empty()
				: Optional.of(new DraftEvent.PointsChoice(value.substring(0, stroke), value.substring(stroke + 1)));
	}

}
