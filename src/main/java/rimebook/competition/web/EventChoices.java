package rimebook.competition.web;

import java.util.List;

import rimebook.competition.JudgingMethod;
import rimebook.competition.RuleSets;
import rimebook.pages.Choice;
import rimebook.tabulation.DisqualifiedPlaces;
import rimebook.tabulation.PlacementRules;
import rimebook.tabulation.SegmentKind;

/** What there is to choose from in the form of an event, the usual answer first. */
record EventChoices(List<JudgingMethod> methods, List<SegmentKind> kinds, PolicyChoices policies, List<Choice> points) {

	EventChoices(List<JudgingMethod> methods, RuleSets ruleSets) {
		this(methods, List.of(SegmentKind.values()), PolicyChoices.all(), PointsOffer.of(ruleSets));
	}

	/** The values of each policy that rulebooks leave open. */
	record PolicyChoices(List<PlacementRules.CardTieBreak> tieBreaks,
			List<PlacementRules.SharedOrdinals> sharedOrdinals, List<PlacementRules.EqualJudgesInFavour> equalJudges,
			List<PlacementRules.ZeroMark> zeroMarks, List<DisqualifiedPlaces> disqualifiedPlaces) {

		private static PolicyChoices all() {
			return new PolicyChoices(
					List.of(PlacementRules.CardTieBreak.SECOND_MARK, PlacementRules.CardTieBreak.FIRST_MARK),
					List.of(PlacementRules.SharedOrdinals.values()),
					List.of(PlacementRules.EqualJudgesInFavour.values()), List.of(PlacementRules.ZeroMark.values()),
					List.of(DisqualifiedPlaces.values()));
		}

	}

}
